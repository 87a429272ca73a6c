package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.Condition;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class SquaringTest {
  private static final Draft SLAB = Drafts.of(0, 0, 360, 0, 360, 100, 0, 100);

  private static Move line(double x1, double y1, double x2, double y2) {
    return Move.between(new Point(x1, y1), new Point(x2, y2), Move.Reach.PIECE);
  }

  private static Condition<Draft> upright(double... at) {
    return new Condition<>(
        d -> {
          for (int i = 0; i < at.length; i++) {
            Laid l = d.line(i);
            if (Math.abs(l.end(false).x() - at[i]) > 0.01
                || Math.abs(l.end(true).x() - at[i]) > 0.01) {
              return false;
            }
          }
          return d.lines().size() == at.length;
        },
        "with upright lines at %s",
        Arrays.toString(at));
  }

  /** About either end or its middle, the line beside it left alone or moved over. */
  @Test
  void aSlantedLineIsSetUprightAloneAndWithTheLineBesideIt() {
    Draft draft = SLAB.cutAll(List.of(line(100, 0, 120, 100), line(240, 0, 240, 100)));
    List<Draft> found = Squaring.of(SLAB, draft);
    for (double x : new double[] {100, 110, 120}) {
      // The gap beyond the line, 250 in, becomes so much wider or narrower.
      double over = 360 - 120 * (360 - x) / 250;
      assertThat(found).areAtLeastOne(upright(x, 240));
      assertThat(found).haveAtLeastOne(upright(x, Math.round(over * 100) / 100.0));
    }
  }

  @Test
  void whatIsSquareStays() {
    Draft draft = SLAB.cutAll(List.of(line(100, 0, 100, 100), line(240, 0, 240, 100)));
    assertThat(Squaring.of(SLAB, draft)).isEmpty();
  }

  /** A line that bends where another meets it becomes one straight line. */
  @Test
  void allOfALineIsSetSquare() {
    Draft draft =
        SLAB.cutAll(List.of(line(0, 50, 360, 50), line(100, 0, 120, 50), line(120, 50, 120, 100)));
    assertThat(draft.lines()).hasSize(3);
    assertThat(Squaring.of(SLAB, draft))
        .anySatisfy(
            d -> {
              assertThat(d.lines()).hasSize(3);
              assertThat(d.line(1).path().length()).isCloseTo(50, within(0.01));
              assertThat(d.line(2).end(true).x()).isCloseTo(100, within(0.01));
              assertThat(d.tally().tees()).isEmpty();
            });
  }

  /** A tee closes where the line it ends beside moves to it. */
  @Test
  void aLineIsBroughtToAnOpenTee() {
    Draft draft =
        SLAB.cutAll(List.of(line(0, 50, 360, 50), line(180, 50, 180, 100), line(200, 0, 200, 50)));
    assertThat(draft.tally().tees()).hasSize(2);
    assertThat(Squaring.of(SLAB, draft)).anySatisfy(d -> assertThat(d.tally().tees()).isEmpty());
  }
}
