package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Weight;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.sheet.svg.SvgPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

/** What holds of the files whatever is drawn in them. */
class PaperTest {
  private static final Plan DRIVE = LaidPlans.plan("multi_drive_approach_walk");

  private static Page page(Mark... marks) {
    return new Page("test", "", Paper.LETTER, List.of(marks));
  }

  private static byte[] pdf(Page page) {
    return PdfSheet.bytes(
        new SheetSet("test", Locale.ENGLISH, Optional.empty(), List.of(), List.of(page)));
  }

  @Test
  void pageIsLetterToThePoint() throws IOException {
    try (PDDocument document = Loader.loadPDF(LaidPlans.pdf(DRIVE))) {
      for (PDPage page : document.getPages()) {
        assertThat(page.getMediaBox().getWidth()).isEqualTo(792);
        assertThat(page.getMediaBox().getHeight()).isEqualTo(612);
      }
    }
  }

  static List<Paper> papers() {
    return Paper.ALL.stream().flatMap(p -> Stream.of(p, p.turned())).toList();
  }

  /** Page sizes to a hundredth of a millimetre: 1/2540 in. */
  @ParameterizedTest
  @MethodSource("papers")
  void pageIsAsLargeAsItsPaper(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(new Page("test", "", paper, List.of())))) {
      PDRectangle box = document.getPage(0).getMediaBox();
      assertThat(box.getLowerLeftX()).isZero();
      assertThat(box.getLowerLeftY()).isZero();
      assertThat(box.getWidth() / 72 * 25.4).isCloseTo(paper.width(), within(0.005));
      assertThat(box.getHeight() / 72 * 25.4).isCloseTo(paper.height(), within(0.005));
    }
  }

  @Test
  void paperStandsWhereThePlanIsLargerForIt() {
    Plan square = LaidPlans.plan("opening_tree_well_24x24_4in");
    Paper stands = LaidPlans.pages(square).getFirst().paper();
    assertThat(stands.height()).isGreaterThan(stands.width());
    Paper lies = LaidPlans.pages(LaidPlans.plan("rect_lane_11x96_5in")).getFirst().paper();
    assertThat(lies.width()).isGreaterThan(lies.height());
  }

  @Test
  void fileSaysWhatItIsAndInWhatLanguage() throws IOException {
    try (PDDocument document = Loader.loadPDF(LaidPlans.pdf(DRIVE))) {
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Cut sheet");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
    }
  }

  @Test
  void everyFontIsEmbeddedAsASubset() throws IOException {
    Set<String> fonts = new HashSet<>();
    try (PDDocument document = Loader.loadPDF(LaidPlans.pdf(DRIVE))) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          fonts.add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
        }
      }
    }
    assertThat(fonts).contains("Lato-Bold", "Lato-Heavy", "Lato-Medium", "Lato-Semibold");
    assertThat(fonts).allMatch(f -> f.startsWith("Lato-"));
  }

  @Test
  void tenCentimetresMeasureTenCentimetres() throws IOException {
    Mark bar = Mark.Line.of(new Point(50, 100), new Point(150, 100), 2, Role.OUTLINE);
    int dotsPerInch = 254;
    BufferedImage picture =
        ImageIO.read(new ByteArrayInputStream(PdfSheet.picture(pdf(page(bar)), 0, dotsPerInch)));
    int dark = 0;
    int first = -1;
    for (int x = 0; x < picture.getWidth(); x++) {
      if ((picture.getRGB(x, 1000) & 0xff) < 128) {
        first = first < 0 ? x : first;
        dark++;
      }
    }
    assertThat(dark).isCloseTo(1000, within(1));
    assertThat(first).isCloseTo(500, within(1));
  }

  @Test
  void characterThatTheFontLacksIsAFault() {
    Mark words =
        Mark.Words.level(new Point(20, 20), "\u4e00", 5, Weight.BOLD, Anchor.START, Role.TEXT);
    assertThatThrownBy(() -> pdf(page(words)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("U+4E00");
  }

  @Test
  void jobNameThatTheFontLacksIsPrintedAllTheSame() {
    Plan plan =
        DRIVE.withJob(
            new org.jointwright.plan.Job(
                "\u4e00 <&> drive", "", "", "", "", "", DRIVE.job().kept()));
    assertThat(new String(SvgPage.bytes(LaidPlans.pages(plan).getFirst()), StandardCharsets.UTF_8))
        .contains("? &lt;&amp;&gt; drive");
  }

  @Test
  void samePlanGivesTheSameBytes() {
    assertThat(LaidPlans.pdf(DRIVE)).isEqualTo(LaidPlans.pdf(DRIVE));
    assertThat(SvgPage.bytes(LaidPlans.pages(DRIVE).getFirst()))
        .isEqualTo(SvgPage.bytes(LaidPlans.pages(DRIVE).getFirst()));
  }

  @Test
  void svgIsWellFormedTrueToSizeAndTitled() throws Exception {
    byte[] svg = SvgPage.bytes(LaidPlans.pages(DRIVE).getFirst());
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    var root = document.getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("279.4mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 279.4 215.9");
    assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Cut sheet");
    assertThat(root.getElementsByTagName("text").getLength()).isGreaterThan(50);
  }

  @Test
  void xmllintFindsNoFaultWhereItIsInstalled(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("sheet.svg");
    Files.write(file, SvgPage.bytes(LaidPlans.pages(DRIVE).getFirst()));
    Process lint;
    try {
      lint = new ProcessBuilder("xmllint", "--noout", "--nonet", file.toString()).start();
    } catch (IOException notInstalled) {
      org.junit.jupiter.api.Assumptions.abort("xmllint is not installed");
      return;
    }
    assertThat(lint.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(lint.exitValue()).isZero();
  }

  @Test
  void tablesWithoutRoomGoOnOverTheNextPages() {
    List<Page> pages = LaidPlans.pages("yard_200x150_three_openings_8in");
    assertThat(pages).hasSizeGreaterThan(1);
    String last = new String(SvgPage.bytes(pages.getLast()), StandardCharsets.UTF_8);
    assertThat(last).contains(pages.size() + " of " + pages.size());
  }
}
