package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.junit.jupiter.api.Test;

/** Rungs between two sides, the bays between them split where they are wide. */
class LadderTest {
  /** A lot with a corner of 41 degrees: a grid would meet its slanted side at 41 and 49. */
  private static final Draft LOT = Drafts.of(0, 0, 720, 0, 216, 432, 0, 432);

  private static List<Pattern> ladders(Draft draft) {
    return Ladder.of(draft.pieces().getFirst());
  }

  @Test
  void aLotWithASharpCornerTakesRungsFromItsTipOn() {
    assertThat(ladders(LOT)).isNotEmpty();
    for (Pattern p : ladders(LOT)) {
      Draft cut = LOT.cutAll(p.moves());
      assertThat(cut.tally().broken()).isZero();
      assertThat(cut.lines()).hasSameSizeAs(p.moves());
    }
  }

  /** What was counted while it was built is what it comes to. */
  @Test
  void itsFeetAreThoseOfItsJointsAndTees() {
    for (Pattern p : ladders(LOT)) {
      Draft cut = LOT.cutAll(p.moves());
      assertThat(cut.tally().length() + 8 * cut.tally().tees().size())
          .isCloseTo(p.feet(), org.assertj.core.data.Offset.offset(0.5));
    }
  }

  @Test
  void onASquareSlabItIsAGrid() {
    Draft square = Drafts.of(0, 0, 240, 0, 240, 240, 0, 240);
    Draft cut = square.cutAll(ladders(square).getFirst().moves());
    assertThat(cut.pieces()).hasSize(4);
    assertThat(cut.tally().tees()).isEmpty();
    assertThat(cut.tally().length()).isEqualTo(40);
  }

  @Test
  void noneFitsWhereTheSlabIsTooNarrowForAPanel() {
    assertThat(ladders(Drafts.of(0, 0, 240, 0, 240, 6, 0, 6))).isEmpty();
  }

  @Test
  void theSplitsOfTwoBaysDifferByAJointOrByTwiceAsMany() {
    for (Splits s : Splits.upTo(6)) {
      int more = Math.max(s.before().size(), s.after().size());
      int less = Math.min(s.before().size(), s.after().size());
      assertThat(s.tees()).isLessThanOrEqualTo(more - less);
      assertThat(more - less <= 1 || more + 1 == 2 * (less + 1)).isTrue();
    }
  }
}
