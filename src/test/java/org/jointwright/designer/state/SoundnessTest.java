package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What a hand may make of a slab: only what can be read again. */
class SoundnessTest {
  private static final Outline SLAB = ring(0, 0, 200, 0, 200, 100, 0, 100);

  private static Outline ring(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Outline.of(points);
  }

  private static Outline box(double x0, double y0, double x1, double y1) {
    return ring(x0, y0, x1, y0, x1, y1, x0, y1);
  }

  private static Plan plan(Outline outline, Outline... openings) {
    List<Opening> all =
        Arrays.stream(openings).map(o -> new Opening(o, Map.of(), Kept.NOTHING)).toList();
    return Plan.EMPTY.withSlabs(List.of(Slab.of("s", outline).withOpenings(all)));
  }

  private static boolean holds(Outline outline, Outline... openings) {
    Plan plan = plan(outline, openings);
    boolean isRead = PlanReader.read(PlanWriter.bytes(plan)) instanceof PlanReading.ReadPlan;
    assertThat(Soundness.holds(plan, "s")).as("as the file is read").isEqualTo(isRead);
    return isRead;
  }

  @Test
  void anOutlineThatCrossesOrTouchesItselfIsNone() {
    assertThat(holds(SLAB)).isTrue();
    assertThat(holds(ring(0, 0, 200, 0, 0, 100, 200, 100))).isFalse();
    // A corner on the far side, and two squares that share a corner.
    assertThat(holds(ring(0, 0, 200, 0, 200, 100, 100, 0, 0, 100))).isFalse();
    assertThat(holds(ring(0, 0, 100, 0, 100, 50, 150, 50, 150, 90, 100, 90, 100, 50, 0, 50)))
        .isFalse();
  }

  @Test
  void anOpeningStandsHalfAnInchClearOfTheEdge() {
    assertThat(holds(SLAB, box(0, 0, 20, 20))).as("shares a corner").isFalse();
    assertThat(holds(SLAB, box(50, 0, 70, 20))).as("on the edge").isFalse();
    assertThat(holds(SLAB, box(50, 0.4, 70, 20))).as("just inside half an inch").isFalse();
    assertThat(holds(SLAB, box(50, 0.6, 70, 20))).as("just outside half an inch").isTrue();
    assertThat(holds(SLAB, box(190, 50, 210, 60))).as("over the edge").isFalse();
    assertThat(holds(SLAB, box(300, 0, 320, 20))).as("outside").isFalse();
  }

  @Test
  void anOpeningAcrossABayIsNone() {
    Outline bay = ring(0, 0, 200, 0, 200, 100, 120, 100, 120, 40, 80, 40, 80, 100, 0, 100);
    // Each corner lies inside, and the bay between them.
    assertThat(holds(bay, box(60, 50, 140, 90))).isFalse();
  }

  @Test
  void openingsStandClearOfEachOther() {
    assertThat(holds(SLAB, box(20, 20, 60, 60), box(60, 60, 90, 90))).as("a corner").isFalse();
    assertThat(holds(SLAB, box(20, 20, 60, 60), box(30, 30, 40, 40))).as("within").isFalse();
    assertThat(holds(SLAB, box(20, 20, 60, 60), box(61, 20, 90, 60))).as("beside").isTrue();
  }

  @Test
  void aSmallOpeningAndAShortSideFreezeNoSlab() {
    assertThat(holds(SLAB, box(20, 20, 24, 24))).isTrue();
    assertThat(holds(ring(0, 0, 200, 0, 200, 50, 200.25, 50, 200.25, 100, 0, 100))).isTrue();
  }

  @Test
  void whatHoldsIsReadAgain() {
    SplittableRandom random = new SplittableRandom(11);
    int sound = 0;
    for (int i = 0; i < 400; i++) {
      double[] outer = new double[2 * random.nextInt(3, 6)];
      Arrays.setAll(outer, k -> random.nextInt(0, 24) * 8);
      double x = random.nextInt(0, 24) * 8;
      double y = random.nextInt(0, 24) * 8;
      Outline outline = ring(outer);
      if (outline.ring().signedArea() < 0) {
        outline = Outline.of(outline.ring().vertices().reversed());
      }
      Outline opening = box(x, y, x + 16, y + 16);
      boolean isOne = random.nextBoolean() ? holds(outline, opening) : holds(outline);
      sound += isOne ? 1 : 0;
    }
    assertThat(sound).as("of 400 of seed 11").isBetween(20, 380);
  }
}
