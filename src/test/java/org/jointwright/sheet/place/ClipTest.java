package org.jointwright.sheet.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.drawing.Rings;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

/** Lines cut off at the box of a part. */
class ClipTest {
  private static final Box BOX = new Box(0, 0, 100, 100);

  private static Path path(double... xy) {
    List<Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Path.through(points);
  }

  @Test
  void aPathIsCutWhereItLeavesTheBox() {
    assertThat(Clip.paths(path(-50, 50, 50, 50, 50, 150), BOX))
        .containsExactly(path(0, 50, 50, 50, 50, 100));
  }

  @Test
  void aPieceTooShortToBeDrawnDoesNotBreakThePath() {
    List<Path> pieces = Clip.paths(path(10, 10, 50, 10, 50.01, 10, 50.01, 60), BOX);
    assertThat(pieces).containsExactly(path(10, 10, 50, 10), path(50.01, 10, 50.01, 60));
  }

  @Test
  void aPathThatTurnsRightBesideTheBorderIsNotBrokenEither() {
    // It leaves by a hundredth of a millimetre, turns there and comes back.
    List<Path> pieces = Clip.paths(path(10, 10, 100.01, 10, 100.01, 40, 20, 40), BOX);
    assertThat(pieces).hasSize(2);
    assertThat(Clip.paths(path(10, 10, 99.99, 10, 99.99, 40, 20, 40), BOX)).hasSize(1);
  }

  @Test
  void anAreaIsCutWhereItLeavesTheBox() {
    // The white ground of filler hides the slab’s edge under it, in every part that shows it.
    Ring strip = Rings.box(90, 50, 5, 130);
    assertThat(Clip.ring(strip, BOX))
        .hasValueSatisfying(
            r -> {
              assertThat(r.box()).isEqualTo(new Box(90, 50, 95, 100));
              assertThat(r.area()).isEqualTo(250);
            });
  }

  @Test
  void anAreaInTheBoxIsLeftAsItIsAndOneBesideItIsLeftOut() {
    Ring inside = Rings.box(10, 10, 80, 80);
    Ring beside = Rings.box(110, 10, 80, 80);
    assertThat(Clip.ring(inside, BOX)).containsSame(inside);
    assertThat(Clip.ring(beside, BOX)).isEmpty();
  }
}
