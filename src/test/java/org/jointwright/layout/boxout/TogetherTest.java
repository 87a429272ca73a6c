package org.jointwright.layout.boxout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TogetherTest {
  private static final Slab SLAB =
      Slab.of(
          "slab",
          Outline.of(
              List.of(new Point(0, 0), new Point(240, 0), new Point(240, 180), new Point(0, 180))));

  private static FixedObject post(String id, double x, double y) {
    FixedShape shape = new FixedShape.Round(new Point(x, y), Length.inches(8), Kept.NOTHING);
    return new FixedObject(id, "slab", FixedKind.POST, shape, Kept.NOTHING);
  }

  private static List<List<Around>> ways(FixedObject... objects) {
    return BoxOuts.choices(SLAB, List.of(objects), false);
  }

  private static boolean isShared(Around way) {
    return BoxOuts.rings(way.boxes()).size() < way.boxes().size();
  }

  private static double gap(Ring a, Ring b) {
    return Chords.round(a, 0.1).stream()
        .mapToDouble(p -> b.contains(p) ? 0 : b.distance(p))
        .min()
        .orElseThrow();
  }

  /** 3 in clear of each object and nowhere more than 3 ft from it: rules, M7. */
  private static void holds(Around way, FixedObject... objects) {
    for (FixedObject f : objects) {
      BoxOut box =
          way.boxes().stream().filter(b -> b.fixed().equals(f.id())).findFirst().orElseThrow();
      Ring own = f.shape().ring();
      for (Point p : Chords.round(box.outline().ring(), 0.01)) {
        assertThat(own.contains(p)).isFalse();
        assertThat(own.distance(p)).isBetween(3 - 0.05, 36.0);
      }
      assertThat(box.outline().ring().contains(own.box().centre())).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 2, 6, 12, 20})
  void objectsLessThanTwoFeetApartMayShareABoxOut(double gap) {
    FixedObject a = post("a", 100, 90);
    FixedObject b = post("b", 108 + gap, 90);
    List<List<Around>> ways = ways(a, b);
    assertThat(ways).hasSize(1);
    assertThat(ways.getFirst()).anyMatch(TogetherTest::isShared);
    ways.getFirst().forEach(w -> holds(w, a, b));
  }

  @Test
  void boxOutsThatAreNotSharedStandClearOfEachOther() {
    for (double gap = 0; gap <= 48; gap += 4) {
      for (Around way : ways(post("a", 100, 90), post("b", 108 + gap, 94)).getFirst()) {
        List<Ring> rings = BoxOuts.rings(way.boxes());
        if (rings.size() == 2) {
          assertThat(gap(rings.get(0), rings.get(1))).as("gap %s", gap).isGreaterThan(1.9);
        }
      }
    }
  }

  @Test
  void objectsFarApartAreChosenOneByOne() {
    assertThat(ways(post("a", 60, 90), post("b", 116, 90))).hasSize(2);
  }

  @Test
  void noneIsSharedWhereItWouldReachMoreThanThreeFeetFromOneOfThem() {
    // 8 + 26 + 3 in from the near side of one post to the far side of the box-out.
    assertThat(ways(post("a", 100, 90), post("b", 134, 90)).stream().flatMap(List::stream))
        .noneMatch(TogetherTest::isShared);
  }

  @Test
  void ofThreeInARowTheTwoThatAreCloseMayShareAndTheThirdStandsAlone() {
    List<Around> ways = ways(post("a", 80, 90), post("b", 92, 90), post("c", 122, 90)).getFirst();
    assertThat(ways)
        .anySatisfy(
            w -> {
              assertThat(w.boxes()).hasSize(3);
              assertThat(BoxOuts.rings(w.boxes())).hasSize(2);
            });
  }

  @Test
  void sharedBoxOutIsFilledOnce() {
    Around shared =
        ways(post("a", 100, 90), post("b", 114, 90)).getFirst().stream()
            .filter(TogetherTest::isShared)
            .findFirst()
            .orElseThrow();
    assertThat(BoxOuts.filler(shared.boxes(), SLAB)).hasSize(1);
  }
}
