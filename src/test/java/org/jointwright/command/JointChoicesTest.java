package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JointChoicesTest {
  private static final String PATIO =
      """
      {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "patio",
       "use": "foot", "thickness": "4 in", "outline": [[0,0], [13,0], [13,17], [0,17]]}]}
      """;

  @Test
  void choicesAreListedWithTheirFiguresAndNoPlan() {
    Run run = Run.fed(PATIO, "joint", "-", "--choices");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("patio:\n  The usual one, little to cut: 30′-0″ to cut, 4 panels, 1.31 times")
        .contains("  Squarest panels: 43′-0″ to cut, 6 panels, 1.1")
        .contains("(--choice shortest)\n")
        .contains("(--choice squarest)\n")
        .doesNotContain("{");
    assertThat(run.error()).isEmpty();
  }

  @Test
  void chosenLayoutIsWrittenAndKeptInThePlan() {
    Run run = Run.fed(PATIO, "joint", "-", "--choice", "squarest");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("\"choice\": \"squarest\"");
    assertThat(Run.fed(run.out(), "joint", "-").out()).isEqualTo(run.out());
    assertThat(Run.fed(PATIO, "joint", "-").out()).doesNotContain("choice");
  }

  /** One side of it slants, so that joints may run with that one or with the others. */
  private static final String SKEW =
      """
      {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [
       {"id": "pad", "use": "foot", "thickness": "4 in", "outline": [[0,0], [9,3], [9,11], [0,8]]},
       {"id": "step", "use": "foot", "thickness": "4 in", "outline": [[20,0], [28,0], [28,6], [20,6]]}]}
      """;

  @Test
  void aSideIsChosenByTheLettersOfItsCorners() {
    for (String word : new String[] {"along:A-B", "along:b-a", "along:A–B"}) {
      Run run = Run.fed(SKEW, "joint", "-", "--choice", word);
      assertThat(run.code()).as(run.error()).isZero();
      assertThat(run.out()).containsOnlyOnce("\"choice\"").contains("{\"linedUpWith\": 0}");
    }
    assertThat(Run.fed(SKEW, "joint", "-", "--choice", "along:C-D").out())
        .contains("{\"linedUpWith\": 2}");
  }

  @Test
  void aSideThatIsNoneIsRefusedWithThoseThereAre() {
    for (String word : new String[] {"along:A-C", "along:", "along:A", "along:X-Y-Z"}) {
      Run run = Run.fed(SKEW, "joint", "-", "--choice", word);
      assertThat(run.code()).as(word).isEqualTo(2);
      assertThat(run.error()).contains("A-B, B-C, C-D, D-A, E-F, F-G, G-H, H-E");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void theSideOfALayoutThatIsOfferedIsTheWordForIt() {
    String listed = Run.fed(SKEW, "joint", "-", "--choices").out();
    assertThat(listed).contains("In line with side ");
    String word = listed.replaceAll("(?s).*?In line with side [^(]*\\(--choice ([^)]*)\\).*", "$1");
    assertThat(word).matches("along:[A-H]-[A-H]");
    assertThat(Run.fed(SKEW, "joint", "-", "--choice", word).code()).isZero();
  }

  @Test
  void unknownChoiceIsMisuse() {
    Run run = Run.fed(PATIO, "joint", "-", "--choice", "prettiest");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.error()).contains("“prettiest”").contains("squarest");
    assertThat(Run.fed(PATIO, "joint", "-", "--choice", "squarest", "--choices").code())
        .isEqualTo(2);
  }

  @Test
  void listOfChoicesIsNeverWrittenOverThePlan(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("patio.json");
    Files.writeString(file, PATIO);
    for (String other : new String[] {"--in-place", "--json", "--how-near"}) {
      Run run = Run.of("joint", file.toString(), "--choices", other);
      assertThat(run.code()).as(other).isEqualTo(2);
      assertThat(run.error()).contains("--choices").contains(other);
    }
    assertThat(file).hasContent(PATIO);
  }

  @Test
  void howNearAloneSaysNothingElse() {
    Run run = Run.fed(PATIO, "joint", "-", "--how-near");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("patio: Nothing costs less: ").doesNotContain("{");
    assertThat(run.out().lines()).hasSize(1);
    assertThat(run.error()).isEmpty();
  }

  @Test
  void howNearIsSaidBesideAnAnswerThatIsAskedFor(@TempDir Path folder) throws IOException {
    Path laid = folder.resolve("laid.json");
    Run run = Run.fed(PATIO, "joint", "-", "--how-near", "-o", laid.toString());
    assertThat(run.error()).startsWith("patio: Nothing costs less: ");
    assertThat(run.out()).isEmpty();
    assertThat(laid).hasContent(Run.fed(PATIO, "joint", "-").out());
    assertThat(Run.fed(PATIO, "joint", "-", "--how-near", "-o", "-").out())
        .isEqualTo(Run.fed(PATIO, "joint", "-").out());
    assertThat(Run.fed(PATIO, "joint", "-", "--how-near", "--json").out())
        .isEqualTo(Run.fed(PATIO, "joint", "-", "--json").out());
  }
}
