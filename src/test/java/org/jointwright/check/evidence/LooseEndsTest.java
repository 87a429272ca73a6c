package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class LooseEndsTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 100);
  }

  private static List<LooseEnds.End> of(Sketch sketch) {
    return LooseEnds.of(Evidence.of(sketch));
  }

  @Test
  void anEndInTheAirIsLooseByHowFarItIsToTheNearestLine() {
    List<LooseEnds.End> loose = of(slab().joint(100, 7, 100, 80).joint(0, 90, 200, 90));
    assertThat(loose)
        .extracting(LooseEnds.End::at)
        .containsExactly(new Point(100, 7), new Point(100, 80));
    assertThat(loose.getFirst().gap()).isCloseTo(7, within(1e-9));
    assertThat(loose.getLast().gap()).isCloseTo(10, within(1e-9));
  }

  @Test
  void anEndOnItsOwnLineOnlyIsLoose() {
    assertThat(of(slab().joint(100, 0, 100, 50))).hasSize(1);
    assertThat(of(slab().joint(100, 0, 100, 50).joint(100, 50, 100, 100))).isEmpty();
  }

  @Test
  void aCircleHasNoEndsAndAHalfMoonHas() {
    Edge over = Arc.through(new Point(140, 50), new Point(100, 90), new Point(60, 50));
    Edge under = Arc.through(new Point(60, 50), new Point(100, 10), new Point(140, 50));
    assertThat(of(slab().add(joint(over, under)))).isEmpty();
    Edge chord = new Segment(new Point(60, 50), new Point(140, 50));
    assertThat(of(slab().add(joint(over)))).hasSize(2);
    // Closed by its chord it still ends where it begins, which is on its own other piece.
    assertThat(of(slab().add(joint(over, chord)))).isEmpty();
  }

  private static Joint joint(Edge... edges) {
    return Joint.of("J1", JointKind.CONTRACTION, new Path(List.of(edges)), Purpose.SPACING);
  }

  @Test
  void fillerAlongAnEdgeIsNotLooseThoughItStopsShort() {
    assertThat(of(slab().filler(20, 0, 120, 0))).isEmpty();
    assertThat(of(slab().filler(20, 10, 120, 10))).hasSize(2);
    // With one end on the edge it lies on it with a part only.
    assertThat(of(slab().filler(20, 0, 120, 50))).hasSize(1);
  }
}
