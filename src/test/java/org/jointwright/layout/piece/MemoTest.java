package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is known of a piece is known of one that differs in nothing that matters, and of no other.
 */
class MemoTest {
  private static final Draft SLAB = Drafts.of(0, 0, 300, 0, 300, 200, 0, 200);

  private static Loop tagged(Integer... tags) {
    return new Loop(SLAB.pieces().getFirst().outer().edges(), List.of(tags));
  }

  private static boolean isOne(Loop a, Loop b) {
    Memo memo = new Memo();
    return memo.of(a) == memo.of(b);
  }

  @Test
  void theNumbersOfJointsDoNotMatter() {
    assertThat(isOne(tagged(-1, 0, 1, 2), tagged(-1, 7, 3, 5))).isTrue();
    assertThat(isOne(tagged(4, 0, 4, 2), tagged(1, 9, 1, 6))).isTrue();
  }

  @Test
  void whichEdgesRunAlongOneJointMatters() {
    assertThat(isOne(tagged(0, 1, 0, 2), tagged(0, 1, 2, 3))).isFalse();
    assertThat(isOne(tagged(0, 1, 0, 2), tagged(0, 1, 2, 0))).isFalse();
  }

  @Test
  void whatIsTheSlabsOwnMattersAndWhichEdgeOfIt() {
    assertThat(isOne(tagged(-1, 0, 1, 2), tagged(0, 1, 2, 3))).isFalse();
    assertThat(isOne(tagged(-1, 0, 1, 2), tagged(-2, 0, 1, 2))).isFalse();
    assertThat(isOne(tagged(-1, -2, -3, -4), tagged(-1, -2, -3, -4))).isTrue();
  }

  @Test
  void wherePiecesLieMatters() {
    Loop elsewhere = Drafts.of(0, 0, 300, 0, 300, 200, 0.5, 200).pieces().getFirst().outer();
    assertThat(isOne(tagged(-1, -2, -3, -4), elsewhere)).isFalse();
  }

  /** What it is for: the faults of a piece are the same whether known or found anew. */
  @Test
  void whatIsKnownIsWhatWouldBeFound() {
    Draft cut = SLAB;
    List<Double> known = new ArrayList<>();
    List<Double> anew = new ArrayList<>();
    for (int i = 1; i < 6; i++) {
      Move move =
          Move.between(
              new org.jointwright.shape.Point(50 * i, 0),
              new org.jointwright.shape.Point(50 * i + 4, 200),
              Move.Reach.PIECE);
      cut = cut.cut(move).orElseThrow();
      for (Piece p : cut.pieces()) {
        known.add(p.faults().excess());
        anew.add(Faults.of(p).excess());
      }
    }
    assertThat(known).isEqualTo(anew);
    assertThat(known.stream().distinct().count()).isGreaterThan(2);
  }
}
