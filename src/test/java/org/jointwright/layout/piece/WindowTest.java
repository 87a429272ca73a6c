package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A slab of 40 x 30 ft, two rows right across it, the band between them cut on both sides. */
class WindowTest {
  private static final Draft SLAB = Drafts.of(0, 0, 480, 0, 480, 360, 0, 360);

  private static Move line(double x, double y, double ux, double uy, Move.Reach reach) {
    Point at = new Point(x, y);
    return new Move(new Carrier.Line(at, new Point(ux, uy)), at, reach);
  }

  private static final Draft ROWS =
      SLAB.cutAll(
          List.of(
              line(200, 120, 1, 0, Move.Reach.THROUGH), line(200, 240, 1, 0, Move.Reach.THROUGH)));

  /** A joint that ends on the lower row from below. */
  private static final Draft TEE = ROWS.cut(line(160, 60, 0, 1, Move.Reach.PIECE)).orElseThrow();

  private static Window middle(Draft draft) {
    return Window.of(draft, draft.find(new Point(100, 180)));
  }

  @Test
  void itIsThePieceWithTheJointsRoundItHeld() {
    Draft part = middle(TEE).part();
    assertThat(part.pieces()).hasSize(1);
    assertThat(part.pieces().getFirst().area()).isCloseTo(480 * 120, within(1e-6));
    assertThat(part.lines()).hasSize(3).allMatch(Laid::locked);
    assertThat(part.moves()).isEmpty();
    assertThat(part.tally().tees()).extracting(Tally.Tee::at).containsExactly(new Point(160, 120));
  }

  @Test
  void aJointThatEndsElsewhereIsNotSeen() {
    Draft above = ROWS.cut(line(160, 300, 0, 1, Move.Reach.PIECE)).orElseThrow();
    Window below = Window.of(above, above.find(new Point(100, 60)));
    assertThat(below.part().lines()).hasSize(1);
  }

  @Test
  void jointsThatRunFarAreSeenAsFarAsThePiece() {
    Draft columns = TEE.cut(line(300, 180, 0, 1, Move.Reach.THROUGH)).orElseThrow();
    for (Laid l : middle(columns).part().lines()) {
      assertThat(l.path().length()).isLessThan(300 + 13);
    }
  }

  @Test
  void whatIsCutInItEndsInTheWholeWhereItEndedThere() {
    Window window = middle(TEE);
    Draft cut =
        window
            .part()
            .cutAll(
                List.of(
                    line(160, 180, 0, 1, Move.Reach.THROUGH),
                    line(320, 180, 0, 1, Move.Reach.THROUGH)));
    Draft whole = window.into(TEE, cut);
    assertThat(whole.pieces()).hasSize(TEE.pieces().size() + 2);
    List<Laid> laid = whole.lines().subList(TEE.lines().size(), whole.lines().size());
    assertThat(laid)
        .hasSize(2)
        .allSatisfy(
            l -> {
              assertThat(l.end(false).y()).isCloseTo(120, within(1e-6));
              assertThat(l.end(true).y()).isCloseTo(240, within(1e-6));
            });
    // The tee is met from the other side; the two new ends above and one below are open.
    assertThat(whole.tally().tees()).hasSize(3);
  }
}
