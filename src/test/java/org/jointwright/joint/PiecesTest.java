package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that were parted at every crossing, as large yards may be. */
class PiecesTest {
  private static Joint joint(String id, Point from, Point to) {
    return Joint.of(id, JointKind.CONTRACTION, Path.straight(from, to), Purpose.SPACING);
  }

  /** A grid of lines, each parted at every crossing, its pieces in any order and heading. */
  private static List<Joint> parted(int lines, Random random) {
    List<Joint> pieces = new ArrayList<>();
    for (int i = 1; i <= lines; i++) {
      for (int k = 0; k <= lines; k++) {
        boolean isBack = random.nextBoolean();
        Point left = new Point(60 * (isBack ? k + 1 : k), 60 * i);
        Point right = new Point(60 * (isBack ? k : k + 1), 60 * i);
        pieces.add(joint("L" + i + "-" + k, left, right));
        pieces.add(
            joint("U" + i + "-" + k, new Point(60 * i, 60 * k), new Point(60 * i, 60 * (k + 1))));
      }
    }
    Collections.shuffle(pieces, random);
    return pieces;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void piecesOfALineBecomeTheLineAgainWhateverTheirOrder(long seed) {
    List<Joint> pieces = parted(7, new Random(seed));
    List<Straights.Run> runs = Straights.of(pieces);
    assertThat(runs).hasSize(14);
    assertThat(runs).allMatch(r -> r.joints().size() == 8 && r.path().length() == 480);
    assertThat(runs.stream().flatMap(r -> r.joints().stream()))
        .containsExactlyInAnyOrderElementsOf(pieces);
    List<Integer> firsts =
        runs.stream()
            .map(r -> r.joints().stream().mapToInt(pieces::indexOf).min().orElseThrow())
            .toList();
    assertThat(firsts).isSorted();
  }

  @Test
  void anEndWithinATenthGoesOnOneFartherOffDoesNot() {
    Joint first = joint("J1", new Point(0, 0), new Point(100, 0));
    assertThat(Straights.of(List.of(first, joint("J2", new Point(100.09, 0), new Point(200, 0)))))
        .hasSize(1);
    assertThat(Straights.of(List.of(first, joint("J2", new Point(100.11, 0), new Point(200, 0)))))
        .hasSize(2);
  }

  @Test
  void aBendEndsTheLine() {
    Joint first = joint("J1", new Point(0, 0), new Point(100, 0));
    assertThat(Straights.of(List.of(first, joint("J2", new Point(100, 0), new Point(200, 0.06)))))
        .hasSize(1);
    assertThat(Straights.of(List.of(first, joint("J2", new Point(100, 0), new Point(200, 0.07)))))
        .hasSize(2);
  }

  /**
   * A yard of ten thousand panels, parted at each crossing: once it took longer than anyone waits.
   */
  @Test
  void tenThousandPiecesAreJoined() {
    assertThat(Straights.of(parted(70, new Random(1)))).hasSize(140);
  }
}
