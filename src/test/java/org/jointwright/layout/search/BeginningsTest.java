package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** On an approach with flares at 45 degrees, a sharp lot, and slabs that need none of it. */
class BeginningsTest {
  private static final Draft FLARED = Drafts.of(0, 0, 290, 0, 250, 40, 250, 140, 40, 140, 40, 40);
  private static final Draft SHARP = Drafts.of(0, 0, 400, 0, 400, 220, 220, 220);
  private static final Draft SQUARE = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);

  private static Piece piece(Draft draft) {
    return draft.pieces().getFirst();
  }

  @Test
  void whatHasNoSharpCornerAndNoOpeningBeginsInNoSuchWay() {
    assertThat(Beginnings.of(SQUARE)).isEmpty();
  }

  @Test
  void aPieceThatMayStayIsLeftWhole() {
    Draft small = Drafts.of(0, 0, 110, 0, 110, 100, 100, 100);
    assertThat(piece(small).faults().none()).isTrue();
    assertThat(Beginnings.of(small)).isEmpty();
  }

  @Test
  void tipsOfFlaresAreCutOffFromTheirInsideCornersTogetherThenEachAlone() {
    List<Pattern> tips = Beginnings.tips(piece(FLARED));
    assertThat(tips).extracting(p -> p.moves().size()).containsExactly(2, 1, 1);
    Draft cut = FLARED.cutAll(tips.getFirst().moves());
    assertThat(cut.lines()).hasSize(2);
    for (Laid l : cut.lines()) {
      double left = l.end(false).x() < 145 ? 0 : 290;
      assertThat(List.of(l.end(false), l.end(true)))
          .anyMatch(p -> p.distance(new Point(Math.abs(left - 40), 40)) < 0.01)
          .allMatch(p -> Math.abs(p.distance(new Point(left, 0)) - 40 * Math.sqrt(2)) < 0.01);
    }
    // The tips and what lies between them: no inside corner is left.
    assertThat(cut.pieces()).hasSize(3).allMatch(p -> p.faults().corners().isEmpty());
  }

  /** A side longer than the other side of its corner cannot be met by a cut as far along it. */
  @Test
  void noTipWhereTheOtherSideIsShorter() {
    Draft stub = Drafts.of(0, 0, 50, 0, 50, 200, -60, 200, 80 - 180, 100);
    assertThat(Beginnings.tips(piece(stub))).isEmpty();
    assertThat(Beginnings.tips(piece(SQUARE))).isEmpty();
  }

  /** An opening 18 in wide: two joints along both its sides would leave a panel as narrow. */
  @Test
  void jointsTurnRoundANarrowOpeningOneFromEachCorner() {
    Draft slab = Drafts.pierced(336, 324, 192, 228, 18, 18);
    List<Pattern> ways = Beginnings.pinwheels(piece(slab));
    assertThat(ways).hasSize(2);
    for (Pattern way : ways) {
      Draft cut = slab.cutAll(way.moves());
      assertThat(cut.lines()).hasSize(4);
      assertThat(cut.pieces()).hasSize(4);
      for (Piece p : cut.pieces()) {
        assertThat(p.holes()).isEmpty();
        assertThat(p.faults().corners()).isEmpty();
        assertThat(p.measures().width()).isGreaterThan(24);
      }
    }
    // One turns with the clock, the other against it: no joint is in both.
    List<Edge> one = slab.cutAll(ways.getFirst().moves()).lines().stream().map(Laid::path).toList();
    List<Edge> two = slab.cutAll(ways.getLast().moves()).lines().stream().map(Laid::path).toList();
    assertThat(one).noneMatch(e -> two.stream().anyMatch(f -> f.distance(e.at(0.5)) < 0.01));
  }

  @Test
  void aFanIsSquareToTheBisectorAndEvenlyApart() {
    List<Pattern> fans = Beginnings.fans(piece(SHARP));
    assertThat(fans).isNotEmpty();
    Point bisector = new Point(1, 0).turned(Math.toRadians(22.5));
    for (Pattern fan : fans) {
      Draft cut = SHARP.cutAll(fan.moves());
      List<Edge> across =
          cut.lines().stream()
              .map(Laid::path)
              .filter(e -> Math.abs(e.direction(0).cross(bisector)) > 0.5)
              .toList();
      double first = far(across.getFirst(), bisector);
      for (int i = 0; i < across.size(); i++) {
        assertThat(across.get(i).direction(0).dot(bisector)).isCloseTo(0, within(1e-6));
        assertThat(far(across.get(i), bisector)).isCloseTo((i + 1) * first, within(0.05));
      }
      // A joint along the bisector begins at the first of them and halves what lies beyond.
      List<Edge> along =
          cut.lines().stream().map(Laid::path).filter(e -> !across.contains(e)).toList();
      assertThat(along)
          .allMatch(e -> e.start().cross(bisector) < 0.05 && e.end().cross(bisector) < 0.05);
      assertThat(along.size()).isIn(0, across.size());
      assertThat(cut.pieces()).hasSize(1 + across.size() + along.size());
    }
  }

  private static double far(Edge e, Point bisector) {
    return e.at(0.5).dot(bisector);
  }

  /** 75 degrees are sharp no more. */
  @Test
  void onlySharpCornersGetAFan() {
    double lean = 200 / Math.tan(Math.toRadians(74));
    assertThat(Beginnings.fans(piece(Drafts.of(0, 0, 300, 0, 300, 200, lean, 200)))).isNotEmpty();
    lean = 200 / Math.tan(Math.toRadians(76));
    assertThat(Beginnings.fans(piece(Drafts.of(0, 0, 300, 0, 300, 200, lean, 200)))).isEmpty();
  }
}
