package org.jointwright.check.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.junit.jupiter.api.Test;

/** N1, common practice: a corner under 45 degrees breaks off. */
class FeatherCornersTest {
  /** A triangle with that angle at its first corner. */
  private static Sketch corner(double degrees) {
    double a = Math.toRadians(degrees);
    return Sketch.polygon(0, 0, 100, 0, 100 * Math.cos(a), 100 * Math.sin(a));
  }

  @Case(Case.Kind.PASSES)
  @Test
  void aRectangleHasNone() {
    assertThat(Sketch.rectangle(100, 100).findings("N1")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aThinCornerIsANote() {
    assertThat(corner(30).findings("N1"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.n1.feather");
              assertThat(f.severity()).isEqualTo(Severity.NOTE);
              assertThat(f.subject()).isEqualTo(new Subject.AtCorner(0));
              assertThat(f.at().x()).isZero();
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void fortyFiveDegreesPass() {
    assertThat(corner(45).findings("N1")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void aHairSharperIsAFeather() {
    assertThat(corner(44.99).findings("N1")).hasSize(1);
  }

  @Test
  void aCornerJointAcrossItEndsTheMatter() {
    double x = 18 * Math.cos(Math.toRadians(30));
    double y = 18 * Math.sin(Math.toRadians(30));
    assertThat(corner(30).cornerJoint(18, 0, x, y).findings("N1")).isEmpty();
  }

  @Test
  void aCornerJointAtAnotherCornerDoesNot() {
    assertThat(corner(30).cornerJoint(82, 0, 95.34, 17.39).findings("N1")).hasSize(1);
  }
}
