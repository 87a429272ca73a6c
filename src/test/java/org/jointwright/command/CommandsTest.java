package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  private static final String PATIO = "samples/patio-in-a-house-corner.jointwright.json";
  private static final String PAD = "samples/shed-pad-with-a-drain.jointwright.json";

  @TempDir private Path folder;

  @Test
  void jointWritesThePlanWithItsJointsToStandardOutput() {
    Run run = Run.of("joint", PATIO);
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("{\n  \"format\": \"jointwright-plan\"")
        .contains("\"joints\"");
    assertThat(run.error()).isEmpty();
  }

  @Test
  void jointWritesToAFile() {
    Run run = Run.of("joint", PATIO, "-o", at("laid.json"));
    assertThat(run).isEqualTo(new Run(0, "", ""));
    assertThat(folder.resolve("laid.json")).content().isEqualTo(Run.of("joint", PATIO).out());
  }

  @Test
  void jointReadsStandardInput() throws IOException {
    Run run = Run.fed(Files.readString(Path.of(PATIO)), "joint", "-");
    assertThat(run.out()).isEqualTo(Run.of("joint", PATIO).out());
  }

  @Test
  void jointGivesTheLayoutOutputAndNothingElse() {
    Run run = Run.of("joint", PAD, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("{\n  \"unit\": \"m\"")
        .endsWith("}\n")
        .contains("\"panels\"", "\"maxSpacing\": 3.75", "\"boxouts\"", "\"fixed\": \"drain\"");
  }

  @Test
  void jointRefusesToWriteOntoThePlanUnasked() throws IOException {
    String plan = copy(PATIO);
    String before = Files.readString(Path.of(plan));
    Run run = Run.of("joint", plan, "-o", plan);
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains("--in-place");
    assertThat(Path.of(plan)).content().isEqualTo(before);
  }

  @Test
  void jointInPlaceKeepsTheVersionBefore() throws IOException {
    String plan = copy(PATIO);
    String before = Files.readString(Path.of(plan));
    assertThat(Run.of("joint", plan, "--in-place")).isEqualTo(new Run(0, "", ""));
    assertThat(Path.of(plan)).content().contains("\"joints\"");
    assertThat(Path.of(plan + "~")).content().isEqualTo(before);
  }

  @Test
  void inPlaceGoesNeitherWithJsonNorWithStandardInputNorWithAnotherFile() throws IOException {
    String plan = copy(PATIO);
    assertThat(Run.of("joint", plan, "--in-place", "--json").code()).isEqualTo(2);
    assertThat(Run.of("joint", plan, "--in-place", "-o", at("b.json")).code()).isEqualTo(2);
    assertThat(Run.fed("", "joint", "-", "--in-place").code()).isEqualTo(2);
    assertThat(folder.resolve("b.json")).doesNotExist();
  }

  @Test
  void outputThatCannotBeWrittenEndsWithFour() {
    Run run = Run.of("joint", PATIO, "-o", at("no/such/folder/laid.json"));
    assertThat(run.code()).isEqualTo(Outcome.NOT_WRITTEN);
    assertThat(run.error()).contains("laid.json could not be written");
  }

  @Test
  void ruleThatCannotBeMetIsSaidAndIsNoFailure() {
    Run run =
        Run.of("joint", "src/test/resources/cases/open/infeasible_spacing_under_min_panel.json");
    assertThat(run.code()).isZero();
    assertThat(run.error()).contains("(must)", "C1 (note)").doesNotContain("no layout was found");
  }

  @Test
  void withoutAnArgumentOnlyWhatWasNotFoundIsSaid() {
    // Joints fit between the zones only, and the last panel would be 3 ft by 10 ft; no zone alone
    // forbids it.
    String plan =
        """
        {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "drive",
          "outline": [[0, 0], [32, 0], [32, 10], [0, 10]],
          "keepClear": [{"name": "one", "ring": [[-1, -1], [9.5, -1], [9.5, 11], [-1, 11]]},
            {"name": "two", "ring": [[9.7, -1], [19.2, -1], [19.2, 11], [9.7, 11]]},
            {"name": "three", "ring": [[19.4, -1], [28.9, -1], [28.9, 11], [19.4, 11]]},
            {"name": "four", "ring": [[29.1, -1], [33, -1], [33, 11], [29.1, 11]]}]}]}
        """;
    Run run = Run.fed(plan, "joint", "-");
    assertThat(run.code()).isZero();
    assertThat(run.error()).contains("drive: no layout was found").doesNotContain("C1");
  }

  @Test
  void checkFindsNothingInALayoutOfTheEngine() throws IOException {
    Run run = Run.fed(Run.of("joint", PATIO).out(), "check", "-");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("0 broken");
  }

  @Test
  void checkEndsWithOneWhereARuleIsBroken() {
    Run run = Run.of("check", PATIO);
    assertThat(run.code()).isEqualTo(Outcome.BROKEN);
    assertThat(run.out()).contains("M1 (must)", "M7 (must)");
  }

  @Test
  void checkGivesTheLayoutOutputWithItsFindings() {
    Run run = Run.of("check", PATIO, "--json");
    assertThat(run.code()).isEqualTo(Outcome.BROKEN);
    assertThat(run.out())
        .startsWith("{\n  \"unit\": \"ft\"")
        .contains("\"rule\": \"M1\"", "\"severity\": \"must\"", "\"slab\": \"patio\"")
        .contains("\"message\": ", "\"source\": ");
  }

  @Test
  void sheetWritesItsFilesAndPrintsTheirNames() {
    assertThat(Run.of("joint", PATIO, "-o", at("laid.jointwright.json")).code()).isZero();
    Run run = Run.of("sheet", at("laid.jointwright.json"), "-o", at("out"));
    assertThat(run.code()).isZero();
    List<String> named = run.out().lines().toList();
    assertThat(named)
        .contains(at("out/laid-cut-sheet.pdf"), at("out/laid-cut-sheet.svg"))
        .allSatisfy(f -> assertThat(Path.of(f)).isNotEmptyFile());
  }

  @Test
  void sheetSpeaksTheLanguageAndTheMeasuresAskedFor() throws IOException {
    String laid = Run.of("joint", PATIO).out();
    Run run = Run.fed(laid, "sheet", "-", "-o", at("es"), "--lang", "es", "--units", "m");
    assertThat(run.code()).isZero();
    assertThat(Files.readString(folder.resolve("es/cut-sheet.svg")))
        .contains("Hoja de cortes", " m<", "revisado")
        .doesNotContain("Cut sheet", "′");
    Run.fed(laid, "sheet", "-", "-o", at("en"), "--lang", "en", "--units", "ft");
    assertThat(Files.readString(folder.resolve("en/cut-sheet.svg")))
        .contains("Cut sheet", "′")
        .doesNotContain("Hoja", "No finisher who speaks");
  }

  @Test
  void sheetOfAPlanWithoutJointsIsRefusedAndToldOfJoint() {
    Run run = Run.of("sheet", PATIO, "-o", at("out"));
    assertThat(run.code()).isEqualTo(Outcome.REFUSED);
    assertThat(run.error()).contains("jointwright joint");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void sheetWithLettersItLacksIsRefused() throws IOException {
    String plan = Run.of("joint", PATIO).out().replace("Corner patio", "日本");
    Run run = Run.fed(plan, "sheet", "-", "-o", at("out"));
    assertThat(run.code()).isEqualTo(Outcome.REFUSED);
    assertThat(run.error()).contains("日");
  }

  @ParameterizedTest
  @CsvSource({"--for,pour"})
  void whatIsNotBuiltYetEndsWithTwoAndSaysSo(String option, String word) {
    Run run = Run.of("sheet", PATIO, "-o", at("out"), option, word);
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains(word + " is not built yet");
  }

  @ParameterizedTest
  @CsvSource({"--for,nobody", "--paper,wall", "--units,cubits", "--lang,fr"})
  void wordThatIsNoChoiceEndsWithTwo(String option, String word) {
    Run run = Run.of("sheet", PATIO, "-o", at("out"), option, word);
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains("Say one of");
  }

  @ParameterizedTest
  @ValueSource(strings = {"fly", "--fast"})
  void unknownCommandsAndOptionsEndWithTwo(String word) {
    Run run = Run.of(word);
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains(word, "--help");
    assertThat(run.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"design", "joint", "check", "sheet", "schema"})
  void everyCommandHasHelp(String command) {
    Run run = Run.of(command, "--help");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("Usage: jointwright " + command);
    assertThat(run.error()).isEmpty();
    assertThat(Run.of("--help").out()).contains("  " + command + "  ");
  }

  @Test
  void helpListsNoCommandThatIsNotBuilt() {
    assertThat(Run.of("--help").out()).doesNotContain("welcome", "heights", "price", "export");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heights", "price", "pour", "export"})
  void commandThatIsNotBuiltEndsWithTwoAndSaysSoWhateverItsArguments(String command) {
    Run run = Run.of(command, PATIO, "-o", at("out"), "--anything=1", "--help");
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error())
        .isEqualTo("“" + command + "” is not built yet. What there is: jointwright --help.\n");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void planAloneIsPointedToTheWindow() {
    Run run = Run.of(PATIO);
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains("jointwright design " + PATIO);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheet|Something is missing: -o DIR, PLAN.",
        "joint|Something is missing: PLAN.",
        "joint p.json -o|-o stands without its value. Write -o FILE.",
        "joint p.json q.json|“q.json” is one word too many here.",
        "joint p.json --json --json|--json stands there twice. Say it once.",
        "joint p.json --fast|There is no option “--fast” here.",
        "fly|There is no command “fly”.",
        "joint p.json --json=x|--json does not take what was given to it."
      })
  void misuseIsSaidInTheProgramsOwnWords(String line, String said) {
    Run run = Run.of(line.split(" "));
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).startsWith(said).contains("--help");
  }

  @Test
  void sheetOfABrokenPlanSaysWhatIsBrokenAndIsNoFailure() throws IOException {
    String laid =
        Run.of("joint", "src/test/resources/cases/open/infeasible_spacing_under_min_panel.json")
            .out();
    Run run = Run.fed(laid, "sheet", "-", "-o", at("out"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("cut-sheet.pdf");
    assertThat(run.error()).contains("(must)");
  }

  @Test
  void sheetIntoAFileIsToldToNameAFolder() throws IOException {
    String file = copy(PATIO);
    Run run = Run.fed(Run.of("joint", PATIO).out(), "sheet", "-", "-o", file);
    assertThat(run.code()).isEqualTo(Outcome.NOT_WRITTEN);
    assertThat(run.error()).isEqualTo(file + " is a file; name a folder.\n");
  }

  @Test
  void standardOutputThatBreaksOffIsSaidSo() {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("gone");
          }
        };
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console = new Console(InputStream.nullInputStream(), broken, new PrintStream(error));
    int code = new CommandLineProgram(console, plan -> false).execute("schema");
    assertThat(code).isEqualTo(Outcome.NOT_WRITTEN);
    assertThat(error.toString(StandardCharsets.UTF_8)).startsWith("Standard output could not");
  }

  @Test
  void versionIsTold() {
    assertThat(Run.of("--version").out()).matches("jointwright \\d+\\.\\d+\\.\\d+\\R");
  }

  @Test
  void schemaIsPrinted() {
    assertThat(Run.of("schema").out()).contains("https://json-schema.org/draft/2020-12/schema");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "design"})
  void withoutADisplayTheWindowIsSaidToNeedOne(String command) {
    Run run = command.isEmpty() ? Run.of() : Run.of(command);
    assertThat(run.code()).isEqualTo(Outcome.NOT_WRITTEN);
    assertThat(run.error()).contains("no display");
  }

  @Test
  void designOpensTheWindowOnThePlan() {
    List<Optional<Path>> opened = new ArrayList<>();
    Run run = Run.with(opened::add, "", "design", PATIO);
    assertThat(run.code()).isZero();
    assertThat(opened).containsExactly(Optional.of(Path.of(PATIO)));
  }

  @Test
  void welcomeLaysOutTheSampleWritesItsSheetsAndSaysThatThereIsNoDisplay() {
    Run run = Run.of("welcome", "-o", at("out"));
    assertThat(run.code()).isZero();
    assertThat(run.out().lines()).allSatisfy(f -> assertThat(Path.of(f)).isNotEmptyFile());
    assertThat(run.out()).contains("drive-approach-walk-cut-sheet.pdf");
    assertThat(run.error()).contains("no display");
  }

  @Test
  void faultOfTheProgramLeavesAReportAndNoTrace() {
    Run run =
        Run.with(
            plan -> {
              throw new IllegalStateException("made by the test");
            },
            "",
            "design");
    assertThat(run.code()).isEqualTo(Outcome.FAULT);
    assertThat(run.error()).contains("A report lies in").doesNotContain("\tat ", "made by");
    Path report = Path.of(run.error().replaceAll("(?s).* lies in (.*?);.*", "$1"));
    assertThat(report).content().contains("made by the test", "IllegalStateException");
    assertThat(report.toFile().delete()).isTrue();
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private String copy(String plan) throws IOException {
    return Files.copy(Path.of(plan), folder.resolve("plan.jointwright.json")).toString();
  }
}
