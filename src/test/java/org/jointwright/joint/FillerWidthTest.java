package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.jointwright.check.Sketch;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.junit.jupiter.api.Test;

/**
 * How wide filler is where nobody says: a ready-mix association’s profile on joints and UFGS
 * 03300N, 3.8.3, have 1/2 in; FHWA T 5040.30, 1990, paragraph 7, has 3/4 in at the street.
 */
class FillerWidthTest {
  private static double width(Against against, double x) {
    Slab slab =
        Sketch.rectangle(240, 120).edge(3, against).filler(x, 120, x, 0).plan().slabs().getFirst();
    return FillerWidth.of(slab.joints().getFirst(), slab);
  }

  @Test
  void isHalfAnInchAtABuilding() {
    assertThat(width(Against.BUILDING, 0)).isEqualTo(0.5);
  }

  @Test
  void isThreeQuartersAtTheStreet() {
    assertThat(width(Against.STREET, 0)).isEqualTo(0.75);
  }

  @Test
  void isAtTheStreetWithinHalfAnInch() {
    assertThat(width(Against.STREET, 0.49)).isEqualTo(0.75);
    assertThat(width(Against.STREET, 0.51)).isEqualTo(0.5);
  }

  @Test
  void isWhatTheJointSaysWhereItSays() {
    Slab slab =
        Sketch.rectangle(240, 120)
            .edge(3, Against.STREET)
            .filler(0, 120, 0, 0)
            .plan()
            .slabs()
            .getFirst();
    Joint usual = slab.joints().getFirst();
    Joint said =
        new Joint(
            usual.id(),
            usual.kind(),
            usual.path(),
            usual.locked(),
            usual.purpose(),
            usual.how(),
            usual.depth(),
            Optional.of(Length.inches(1)),
            usual.kept());
    assertThat(FillerWidth.of(said, slab)).isEqualTo(1);
  }
}
