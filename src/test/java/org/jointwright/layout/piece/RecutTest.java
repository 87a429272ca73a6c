package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cuts made anew from where they differ are what all of them made anew would be. */
class RecutTest {
  private static final Draft SLAB = Drafts.of(0, 0, 480, 0, 480, 200, 300, 200, 300, 360, 0, 360);

  private static Move move(Random chance) {
    Point at = new Point(20 + 440 * chance.nextDouble(), 20 + 320 * chance.nextDouble());
    double turn = Math.PI / 2 * chance.nextInt(2) + (chance.nextInt(4) == 0 ? 0.2 : 0);
    Point u = new Point(Math.cos(turn), Math.sin(turn));
    Move.Reach reach = chance.nextBoolean() ? Move.Reach.PIECE : Move.Reach.THROUGH;
    return new Move(new Carrier.Line(at, u), at, reach);
  }

  private static void isSame(Draft one, Draft other) {
    assertThat(one.lines()).isEqualTo(other.lines());
    assertThat(one.moves()).isEqualTo(other.moves());
    assertThat(one.pieces()).hasSameSizeAs(other.pieces());
    for (int i = 0; i < one.pieces().size(); i++) {
      assertThat(one.pieces().get(i).outer().edges())
          .isEqualTo(other.pieces().get(i).outer().edges());
      assertThat(one.pieces().get(i).outer().tags())
          .isEqualTo(other.pieces().get(i).outer().tags());
    }
    assertThat(one.tally()).isEqualTo(other.tally());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void whateverIsLeftOutPutInOrChanged(int seed) {
    Random chance = new Random(seed);
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      moves.add(move(chance));
    }
    Draft cut = SLAB.cutAll(moves);
    for (int i = 0; i < cut.moves().size(); i++) {
      List<Move> fewer = new ArrayList<>(cut.moves());
      fewer.remove(i);
      List<Move> other = new ArrayList<>(cut.moves());
      other.set(i, move(chance));
      List<Move> more = new ArrayList<>(cut.moves());
      more.add(i, move(chance));
      for (List<Move> now : List.of(fewer, other, more, cut.moves().subList(0, i))) {
        isSame(cut.recut(SLAB, now), SLAB.cutAll(now));
      }
    }
  }

  /** The user's joints are in the slab that all cuts are made in, and stay. */
  @Test
  void theUsersJointsStay() {
    Draft held =
        SLAB.hold(
            new org.jointwright.shape.Segment(new Point(150, 0), new Point(150, 360)),
            org.jointwright.plan.JointKind.CONSTRUCTION);
    Random chance = new Random(11);
    List<Move> moves = List.of(move(chance), move(chance), move(chance), move(chance));
    Draft cut = held.cutAll(moves);
    List<Move> fewer = new ArrayList<>(cut.moves());
    fewer.removeFirst();
    isSame(cut.recut(held, fewer), held.cutAll(fewer));
    assertThat(cut.recut(held, List.of()).lines()).isEqualTo(held.lines());
  }

  /** A draft that came of elsewhere knows nothing of how it was cut. */
  @Test
  void whatIsNotRememberedIsCutFromTheStart() {
    Random chance = new Random(12);
    List<Move> moves = List.of(move(chance), move(chance), move(chance));
    Draft cut = SLAB.cutAll(moves);
    Draft bare = Draft.of(SLAB.ground(), cut.pieces(), cut.lines());
    isSame(bare.recut(SLAB, moves.subList(0, 1)), SLAB.cutAll(moves.subList(0, 1)));
  }
}
