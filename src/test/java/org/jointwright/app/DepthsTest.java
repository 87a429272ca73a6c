package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A quarter of the thickness and an inch: NRMCA CIP 6, as its text is reproduced elsewhere. */
class DepthsTest {
  private static final Slab SLAB =
      Slab.of("slab", Outline.of(List.of(new Point(0, 0), new Point(240, 0), new Point(240, 240))));
  private static final Path PATH = Path.straight(new Point(120, 0), new Point(120, 120));

  @Test
  void contractionJointIsAQuarterOfTheThicknessDeep() {
    assertThat(depth(6, joint(Optional.empty(), Optional.empty()))).isEqualTo(1.5);
  }

  @Test
  void contractionJointIsAtLeastAnInchDeep() {
    assertThat(depth(3.5, joint(Optional.empty(), Optional.empty()))).isEqualTo(1);
  }

  @Test
  void earlyEntryCutMayBeAnInchInAnySlab() {
    assertThat(depth(8, joint(Optional.of(How.EARLY_ENTRY), Optional.empty()))).isEqualTo(1);
  }

  @Test
  void depthThatWasGivenStands() {
    Joint given = joint(Optional.empty(), Optional.of(Length.inches(2)));
    assertThat(depth(4, given)).isEqualTo(2);
  }

  @Test
  void constructionJointHasNoDepth() {
    Joint formed = Joint.of("J1", JointKind.CONSTRUCTION, PATH, Purpose.SPACING);
    assertThat(Depths.of(SLAB, formed)).isEmpty();
  }

  private static double depth(double thickness, Joint joint) {
    return Depths.of(SLAB.withThickness(Length.inches(thickness)), joint).orElseThrow().inches();
  }

  private static Joint joint(Optional<How> how, Optional<Length> depth) {
    return new Joint(
        "J1",
        JointKind.CONTRACTION,
        PATH,
        false,
        Purpose.SPACING,
        how,
        depth,
        Optional.empty(),
        Kept.NOTHING);
  }
}
