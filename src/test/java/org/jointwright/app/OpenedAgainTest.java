package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.Remark;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** Sheets carry their plan, and what is wrong with it is said by its place. */
class OpenedAgainTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final String DRIVE = "samples/drive-approach-walk.jointwright.json";

  private static final Plan LAID = laid(DRIVE);

  @TempDir private static Path once;
  @TempDir private Path folder;

  @BeforeAll
  static void print() throws Exception {
    printed(once, LAID, SheetKind.CREW);
  }

  private static List<Path> printed(Path folder, Plan plan, SheetKind... kinds) throws Exception {
    Sheets.Wanted wanted = new Sheets.Wanted(List.of(kinds), WORDS, "letter");
    return Sheets.write(Answer.asItStands(plan), wanted, folder, "job", () -> true);
  }

  private static Plan laid(String file) {
    return Answer.laid(read(PlanFiles.open(Path.of(file))).plan()).plan();
  }

  private static PlanReading.ReadPlan read(PlanReading reading) {
    assertThat(reading).isInstanceOf(PlanReading.ReadPlan.class);
    return (PlanReading.ReadPlan) reading;
  }

  private static List<String> refused(byte[] file) throws IOException {
    PlanReading reading = PlanFiles.open(new ByteArrayInputStream(file));
    assertThat(reading).isInstanceOf(PlanReading.Refused.class);
    return said(((PlanReading.Refused) reading).problems());
  }

  private static List<String> said(List<Remark> remarks) {
    return remarks.stream().map(r -> r.say(WORDS)).toList();
  }

  private static String svg() throws IOException {
    return Files.readString(once.resolve("job-cut-sheet.svg"));
  }

  private static byte[] pdf() throws IOException {
    return Files.readAllBytes(once.resolve("job-cut-sheet.pdf"));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {DRIVE, "samples/shed-pad-with-a-drain.jointwright.json"})
  void everySheetOfASetCarriesThePlanJustAsItsFileHasIt(String sample) throws Exception {
    Plan plan = laid(sample);
    SheetKind[] kinds = SheetKind.values();
    List<Path> files =
        printed(folder, plan, sample.equals(DRIVE) ? kinds : Arrays.copyOf(kinds, 1));
    assertThat(files).hasSizeGreaterThan(2);
    for (Path file : files) {
      if (!file.toString().endsWith(".png")) {
        PlanReading.ReadPlan read = read(PlanFiles.open(file));
        assertThat(PlanFiles.text(read.plan())).isEqualTo(PlanFiles.text(plan));
        assertThat(read.isInSheet()).isTrue();
        assertThat(read.repairs()).isEmpty();
      }
    }
    assertThat(read(PlanFiles.open(Path.of(sample))).isInSheet()).isFalse();
  }

  @Test
  void whatXmlCannotHoldIsCarriedAllTheSame() throws Exception {
    String odd = "a ]]> b <![CDATA[ &amp; \\u0001 \\ufffe \\uffff \\ud800 ]]]]>> é \\r\\n";
    String file =
        Files.readString(Path.of(DRIVE))
            .replaceFirst("\\{", "{\"aside\": \"" + odd.replace("\\", "\\\\") + "\",");
    Plan plan = Answer.laid(read(PlanReader.read(file)).plan()).plan();
    assertThat(PlanFiles.text(plan)).contains("]]> b");
    for (Path sheet : printed(folder, plan, SheetKind.CREW).subList(0, 2)) {
      PlanReading.ReadPlan read = read(PlanFiles.open(sheet));
      assertThat(PlanFiles.text(read.plan())).isEqualTo(PlanFiles.text(plan));
      assertThat(read.repairs()).isEmpty();
    }
  }

  @Test
  void svgSaysJobDateAndProgramInTheTermsOfDublinCore() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Element root =
        factory
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(bytes(svg())))
            .getDocumentElement();
    UnaryOperator<String> term =
        name ->
            root.getElementsByTagNameNS("http://purl.org/dc/elements/1.1/", name)
                .item(0)
                .getTextContent();
    assertThat(term.apply("title")).isEqualTo("Cut sheet");
    assertThat(term.apply("subject")).isEqualTo("Straight drive");
    assertThat(term.apply("date")).isEqualTo("2026-05-04");
    assertThat(term.apply("creator")).isEqualTo("Jointwright " + Program.VERSION);
    assertThat(term.apply("language")).isEqualTo("en");
    assertThat(root.getElementsByTagName("metadata").getLength()).isEqualTo(1);
  }

  @Test
  void pdfSaysTheSameTwiceAndNamesThePlanAsItsSource() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      var facts = document.getDocumentInformation();
      assertThat(facts.getTitle()).isEqualTo("Straight drive: Cut sheet");
      assertThat(facts.getSubject()).isEqualTo("Straight drive");
      assertThat(facts.getCreator()).isEqualTo("Jointwright " + Program.VERSION);
      String xmp =
          new String(
              document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(bytes(xmp)));
      assertThat(xmp)
          .contains(">" + facts.getTitle() + "<", ">" + facts.getSubject() + "<")
          .contains("<xmp:CreateDate>2026-05-04<", ">" + facts.getCreator() + "<");
      var attached = attached(document);
      assertThat(attached.getCOSObject().getNameAsString(COSName.AF_RELATIONSHIP))
          .isEqualTo("Source");
      assertThat(attached.getEmbeddedFile().getSubtype()).isEqualTo("application/json");
      assertThat(document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF)).hasSize(1);
    }
  }

  private static PDComplexFileSpecification attached(PDDocument document) throws IOException {
    return document
        .getDocumentCatalog()
        .getNames()
        .getEmbeddedFiles()
        .getNames()
        .get("plan.jointwright.json");
  }

  @Test
  void theSamePlanGivesTheSameBytes() throws Exception {
    List<Path> files = printed(folder, LAID, SheetKind.CREW);
    assertThat(Files.readAllBytes(files.getFirst())).isEqualTo(pdf());
    assertThat(Files.readString(files.get(1))).isEqualTo(svg());
  }

  @Test
  void aFaultInThePlanInsideIsNamedByItsLineInTheSheet() throws Exception {
    String svg = svg().replace("\"thickness\": \"4 in\"", "\"thickness\": \"four\"");
    List<String> lines = svg.lines().toList();
    int line = 1;
    while (!lines.get(line - 1).contains("four")) {
      line++;
    }
    assertThat(refused(bytes(svg)))
        .anySatisfy(
            r -> assertThat(r).contains("metadata.plan: slabs[0].thickness").contains("four"))
        .first()
        .asString()
        .contains("line " + line);
  }

  @Test
  void aPlanThatWasChangedSinceIsSaidToBe() throws Exception {
    String svg = svg().replace("\"Straight drive\"", "\"Crooked drive\"");
    PlanReading.ReadPlan read = read(PlanFiles.open(new ByteArrayInputStream(bytes(svg))));
    assertThat(read.plan().job().name()).isEqualTo("Crooked drive");
    assertThat(said(read.repairs()))
        .singleElement()
        .asString()
        .startsWith("metadata.plan (line ")
        .contains("it was changed since");
  }

  @Test
  void aSheetThatAnotherProgramFoldedAnewIsUnchanged() throws Exception {
    String svg = "\uFEFF\n" + svg().replace("\n", "\r\n   ").replace("<![CDATA[", "");
    String folded = svg.replace("]]>", "").replaceFirst("(?s)\uFEFF\n<\\?xml.*?\\?>", "\uFEFF ");
    PlanReading.ReadPlan read = read(PlanFiles.open(new ByteArrayInputStream(bytes(folded))));
    assertThat(read.repairs()).isEmpty();
    assertThat(PlanFiles.text(read.plan())).isEqualTo(PlanFiles.text(LAID));
  }

  @Test
  void aSheetWithoutItsPlanOrWithTwoOrCutOffIsRefused() throws Exception {
    String svg = svg();
    String plan = svg.replaceFirst("(?s).*(<plan .*</plan>).*", "$1");
    assertThat(refused(bytes(svg.replace(plan, ""))))
        .singleElement()
        .asString()
        .contains("no plan in this file");
    assertThat(refused(bytes(svg.replace(plan, plan + plan))))
        .singleElement()
        .asString()
        .contains("more than one plan");
    assertThat(refused(bytes(svg.substring(0, svg.length() / 2))))
        .singleElement()
        .asString()
        .startsWith("line ")
        .contains("not copied whole");
    byte[] noText = bytes(svg);
    noText[svg.indexOf("Straight")] = (byte) 0xff;
    assertThat(refused(noText)).singleElement().asString().startsWith("This sheet cannot be read");
    assertThat(refused(bytes("<svg>"))).singleElement().asString().contains("cannot be read");
    // A page of the web that was saved for a sheet is none.
    assertThat(refused(bytes("<html>"))).singleElement().asString().contains("not JSON");
  }

  @Test
  void noOtherFileIsFetchedForASheet() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret"), Files.readString(Path.of(DRIVE)));
    String svg =
        svg()
            .replaceFirst(
                "\\?>", "?><!DOCTYPE svg [<!ENTITY s SYSTEM \"" + secret.toUri() + "\">]>")
            .replaceFirst("(?s)<!\\[CDATA\\[.*\\]\\]>", "&s;");
    assertThat(refused(bytes(svg))).noneMatch(r -> r.contains("Straight"));
  }

  @Test
  void aPdfThatIsBrokenLockedOrHasNoPlanIsRefused() throws Exception {
    byte[] pdf = pdf();
    assertThat(refused(Arrays.copyOf(pdf, 600)))
        .singleElement()
        .asString()
        .contains("cannot be read");
    try (PDDocument other = new PDDocument()) {
      other.addPage(new PDPage());
      assertThat(refused(saved(other))).singleElement().asString().contains("no plan in this file");
      other.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
      assertThat(refused(saved(other)))
          .singleElement()
          .asString()
          .contains("locked with a password");
    }
  }

  @Test
  void aPdfWhosePlanWasChangedSinceIsSaidToBe() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      PDComplexFileSpecification attached = attached(document);
      PDEmbeddedFile before = attached.getEmbeddedFile();
      String plan = new String(before.toByteArray(), StandardCharsets.UTF_8);
      PDEmbeddedFile after =
          new PDEmbeddedFile(
              document,
              new ByteArrayInputStream(bytes(plan.replace("Straight drive", "Crooked drive"))));
      COSDictionary facts = before.getCOSObject().getCOSDictionary(COSName.PARAMS);
      after.getCOSObject().setItem(COSName.PARAMS, facts);
      attached.setEmbeddedFile(after);
      attached.setEmbeddedFileUnicode(after);
      PlanReading.ReadPlan read = read(PlanFiles.open(new ByteArrayInputStream(saved(document))));
      assertThat(read.plan().job().name()).isEqualTo("Crooked drive");
      assertThat(said(read.repairs()))
          .singleElement()
          .asString()
          .startsWith("plan.jointwright.json (line 1)")
          .contains("it was changed since");
    }
  }

  private static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  @Test
  void sheetsAreNamedAfterTheSheetThatWasOpened() {
    assertThat(Sheets.stem(Optional.of(Path.of("a", "pad-cut-sheet-2.svg")))).isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("pad-sheets.pdf")))).isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("cut-sheet.pdf")))).isEmpty();
    assertThat(Sheets.stem(Optional.of(Path.of("pad.pdf")))).isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("pad.pdf-cut-sheet.svg")))).isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("pad-cut-sheet.svg-order-sheet.pdf"))))
        .isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("pad.of-may.svg")))).isEqualTo("pad.of-may");
    assertThat(Sheets.stem(Optional.of(Path.of("pad.jointwright.json")))).isEqualTo("pad");
    assertThat(Sheets.stem(Optional.of(Path.of("pad.json")))).isEqualTo("pad");
  }
}
