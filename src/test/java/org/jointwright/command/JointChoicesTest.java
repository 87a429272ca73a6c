package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

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
        .startsWith("patio:\n  Fewest feet to cut: 30′-0″ to cut, 4 panels, 1.31 times")
        .contains("  Squarest panels: 43′-0″ to cut, 6 panels, 1.1")
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

  @Test
  void unknownChoiceIsMisuse() {
    Run run = Run.fed(PATIO, "joint", "-", "--choice", "prettiest");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.error()).contains("“prettiest”").contains("squarest");
    assertThat(Run.fed(PATIO, "joint", "-", "--choice", "squarest", "--choices").code())
        .isEqualTo(2);
  }

  @Test
  void howNearIsSaidBesideTheAnswer() {
    Run run = Run.fed(PATIO, "joint", "-", "--how-near");
    assertThat(run.code()).isZero();
    assertThat(run.error()).startsWith("patio: Nothing in this family costs less");
    assertThat(run.out()).isEqualTo(Run.fed(PATIO, "joint", "-").out());
  }
}
