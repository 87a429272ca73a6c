package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cut sheet proves itself, from the file that the program wrote. */
class ProveCommandTest {
  private static final String SAMPLE = "samples/drive-approach-walk.jointwright.json";

  @TempDir private Path folder;

  private String sheet(String... more) {
    Path laid = folder.resolve("laid.jointwright.json");
    Run.of("joint", SAMPLE, "-o", laid.toString());
    String[] arguments = new String[4 + more.length];
    arguments[0] = "sheet";
    arguments[1] = laid.toString();
    arguments[2] = "-o";
    arguments[3] = folder.toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    assertThat(Run.of(arguments).code()).isZero();
    String kind = more.length > 1 && more[1].equals("plant") ? "order" : "cut";
    return folder.resolve("laid-" + kind + "-sheet.pdf").toString();
  }

  @Test
  void itSaysWhatWasRebuiltAndHowNearItCloses() {
    Run run = Run.of("prove", sheet());
    assertThat(run.code()).isZero();
    assertThat(run.error()).isEmpty();
    assertThat(run.out())
        .startsWith("9 joints, 10 corners, 3 strips of filler and no box-outs rebuilt from ")
        .contains("All 10 sides add up.", "Every figure can be right");
  }

  @Test
  void theReadmeShowsWhatItSays() throws Exception {
    String readme = Files.readString(Path.of("README.md")).replaceAll("from \\d+ figures", "");
    for (String line : Run.of("prove", sheet()).out().lines().toList()) {
      assertThat(readme).contains("    " + line.replaceAll("from \\d+ figures", ""));
    }
  }

  @Test
  void itSpeaksTheLanguageAndTheMeasuresOfTheSheet() {
    Run run = Run.of("prove", sheet("--lang", "es", "--units", "m"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("9 juntas", "10 esquinas", " mm").doesNotContain("″");
  }

  @Test
  void itDrawsWhatWasRebuiltAndWritesItForPrograms() throws Exception {
    String sheet = sheet();
    Path svg = folder.resolve("rebuilt.svg");
    Path png = folder.resolve("rebuilt.png");
    Run run = Run.of("prove", sheet, "--json", "-o", svg.toString());
    assertThat(run.out()).startsWith("{").contains("\"proven\": true", "\"letter\": \"K\"");
    assertThat(Files.readString(svg)).contains("<svg", ">K<", "9 joints");
    assertThat(Run.of("prove", sheet, "-o", png.toString()).code()).isZero();
    assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
  }

  @Test
  void whatIsNoCutSheetIsRefused() {
    String order = sheet("--for", "plant");
    assertThat(Run.of("prove", order).code()).isEqualTo(Outcome.REFUSED);
    assertThat(Run.of("prove", order).error())
        .contains("holds no cut sheet, only: Order sheet")
        .contains("--for all");
    assertThat(Run.of("prove", SAMPLE).error()).contains("is no PDF");
    assertThat(Run.of("prove", SAMPLE).code()).isEqualTo(Outcome.REFUSED);
    assertThat(Run.of("prove", "nowhere.pdf").code()).isEqualTo(Outcome.REFUSED);
    assertThat(Run.of("prove", "nowhere.pdf").error()).contains("is not there");
  }

  @Test
  void theCutSheetInASetIsProvedBesideTheOthers() {
    String cut = sheet();
    sheet("--for", "all");
    String set = folder.resolve("laid-sheets.pdf").toString();
    assertThat(Run.of("prove", set)).isEqualTo(Run.of("prove", cut));
  }

  @Test
  void anOwnersPlanAloneIsNamedInItsOwnLanguage() throws Exception {
    sheet("--for", "owner", "--lang", "es");
    try (var files = Files.list(folder)) {
      Path plan =
          files.filter(f -> f.toString().endsWith("owners-plan.pdf")).findFirst().orElseThrow();
      Run run = Run.of("prove", plan.toString());
      assertThat(run.code()).isEqualTo(Outcome.REFUSED);
      assertThat(run.error()).contains("only: Plano del dueño");
    }
  }

  @Test
  void wrongUseAndAPictureThatCannotBeWrittenEndWithTheirCodes() {
    String sheet = sheet();
    assertThat(Run.of("prove").code()).isEqualTo(Outcome.USAGE);
    assertThat(Run.of("prove", sheet, "-o", "picture.jpg").code()).isEqualTo(Outcome.USAGE);
    Path nowhere = folder.resolve("no").resolve("such").resolve("folder.svg");
    Run run = Run.of("prove", sheet, "-o", nowhere.toString());
    assertThat(run.code()).isEqualTo(Outcome.NOT_WRITTEN);
    assertThat(run.out()).isEmpty();
  }
}
