package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

/** M10, the user's own word: no joint in a zone that is kept clear, 1/2 in forgiven. */
class ClearZonesTest {
  private static Sketch at(double x) {
    return Sketch.rectangle(200, 100)
        .keepClear("drain line", 60, -10, 100, -10, 100, 110, 60, 110)
        .joint(x, 0, x, 100);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aJointBesideTheZonePasses() {
    assertThat(at(120).findings("M10")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointInItIsBroken() {
    assertThat(at(80).findings("M10"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m10.runs");
              assertThat(f.severity()).isEqualTo(Severity.MUST);
              assertThat(f.joint()).contains("J1");
              assertThat(f.measured()).isEqualTo(100);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void aTouchPasses() {
    assertThat(at(60.5).findings("M10")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanATouchDoesNot() {
    assertThat(at(60.6).findings("M10")).hasSize(1);
  }

  @Test
  void aLockedJointIsOnlyNoted() {
    assertThat(at(80).locked().broken("M10")).isEmpty();
    assertThat(at(80).locked().findings("M10"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
  }

  @Test
  void fillerCutsNothing() {
    Sketch s = Sketch.rectangle(200, 100).keepClear("", -5, -5, 50, -5, 50, 105, -5, 105);
    assertThat(s.filler(0, 0, 0, 100).findings("M10")).isEmpty();
    assertThat(s.joint(25, 0, 25, 100).findings("M10"))
        .extracting(Finding::key)
        .containsExactly("check.m10.runsUnnamed");
  }
}
