package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.sheet.svg.SvgPage;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The SVG as a browser shows it and the PDF as a PDF renderer paints it are one picture: at 150
 * dots an inch no dark dot of either is farther than two dots from ink of the other. Needs Chromium
 * and the typeface Lato on the machine; {@code -Drenderers=all} compares every sheet of every
 * sample.
 */
class TwoRenderersTest {
  private static final int DOTS_PER_INCH = 150;
  private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;

  /** A browser counts 96 dots an inch. */
  private static final double BROWSER = 96;

  private static final int REACH = 2;
  private static final int DARK = 100;
  private static final int INK = 170;

  @TempDir private Path folder;

  /** One page to compare. */
  record Compared(String name, Page page) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Compared> pages() {
    if (System.getProperty("renderers", "").equals("all")) {
      List<Compared> all = new ArrayList<>();
      for (String name : LaidPlans.samples()) {
        for (Kind kind : Kind.values()) {
          all.addAll(pages(name, kind, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER));
          all.addAll(pages(name, kind, Language.SPANISH, UnitSystem.METRIC, Paper.A4));
        }
      }
      return all;
    }
    String drive = "multi_drive_approach_walk";
    List<Compared> some = new ArrayList<>();
    some.addAll(pages(drive, Kind.OWNER, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER));
    some.addAll(pages(drive, Kind.CUT, Language.SPANISH, UnitSystem.METRIC, Paper.A4));
    return List.of(some.getFirst(), some.get(1));
  }

  private static List<Compared> pages(
      String name, Kind kind, Language language, UnitSystem units, Paper paper) {
    List<Page> pages = LaidPlans.pages(name, kind, Words.of(language, units), paper);
    List<Compared> all = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      String said = String.join(" ", name, kind.name(), language.code(), "page " + (i + 1));
      all.add(new Compared(said, pages.get(i)));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void bothAreOnePicture(Compared compared) throws Exception {
    Page page = compared.page();
    BufferedImage browser = browser(page);
    SheetSet alone = new SheetSet("", Locale.ENGLISH, Optional.empty(), List.of(), List.of(page));
    byte[] png = PdfSheet.picture(PdfSheet.bytes(alone), 0, DOTS_PER_INCH);
    BufferedImage printed = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(strays(browser, printed)).as("dots only the browser has").isEmpty();
    assertThat(strays(printed, browser)).as("dots only the printer has").isEmpty();
  }

  /** The dark dots of one picture that have no ink of the other near, the first of them. */
  private static List<String> strays(BufferedImage one, BufferedImage other) {
    List<String> strays = new ArrayList<>();
    int width = Math.min(one.getWidth(), other.getWidth());
    int height = Math.min(one.getHeight(), other.getHeight());
    for (int y = REACH; y < height - REACH; y++) {
      for (int x = REACH; x < width - REACH; x++) {
        if (grey(one, x, y) < DARK && !hasInkNear(other, x, y) && strays.size() < 10) {
          strays.add(String.format(Locale.ROOT, "%.1f, %.1f mm", x / DOTS_PER_MM, y / DOTS_PER_MM));
        }
      }
    }
    return strays;
  }

  private static boolean hasInkNear(BufferedImage image, int x, int y) {
    for (int dy = -REACH; dy <= REACH; dy++) {
      for (int dx = -REACH; dx <= REACH; dx++) {
        if (grey(image, x + dx, y + dy) < INK) {
          return true;
        }
      }
    }
    return false;
  }

  private static int grey(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16 & 0xff) * 3 + (rgb >> 8 & 0xff) * 6 + (rgb & 0xff)) / 10;
  }

  private BufferedImage browser(Page page) throws IOException, InterruptedException {
    if (!says(List.of("fc-list", ":family=Lato", "family")).contains("Lato")) {
      abort("the typeface Lato is not installed: apt-get install fonts-lato");
    }
    Path svg = folder.resolve("page.svg");
    Path png = folder.resolve("page.png");
    Files.write(svg, SvgPage.bytes(page));
    double mm = BROWSER / 25.4;
    String size =
        (int) Math.ceil(page.paper().width() * mm)
            + ","
            + (int) Math.ceil(page.paper().height() * mm);
    says(
        List.of(
            "chromium",
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--hide-scrollbars",
            "--user-data-dir=" + folder.resolve("profile"),
            "--force-device-scale-factor=" + DOTS_PER_INCH / BROWSER,
            "--window-size=" + size,
            "--screenshot=" + png,
            svg.toUri().toString()));
    if (!Files.exists(png)) {
      abort("Chromium took no picture");
    }
    return ImageIO.read(png.toFile());
  }

  private String says(List<String> command) throws IOException, InterruptedException {
    Path said = folder.resolve("said");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        abort(command.getFirst() + " gave no answer");
      }
    } catch (IOException notInstalled) {
      abort(command.getFirst() + " is not installed");
    }
    return Files.readString(said, StandardCharsets.UTF_8);
  }
}
