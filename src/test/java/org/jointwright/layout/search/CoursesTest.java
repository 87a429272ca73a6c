package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Rows across slabs with panels at most 10 ft long. */
class CoursesTest {
  private static final Point ALONG = new Point(1, 0);

  private static List<Courses.Set> sets(Piece piece) {
    return new Courses(piece, ALONG, List.of()).sets();
  }

  @Test
  void withoutCornersThereIsOneSetOfTheFewestRows() {
    Piece plain = Drafts.of(0, 0, 1800, 0, 1800, 1200, 0, 1200).pieces().getFirst();
    List<Courses.Set> sets = sets(plain);
    assertThat(sets).hasSize(1);
    assertThat(sets.getFirst().places()).hasSize(9);
    assertThat(sets.getFirst().feet()).isCloseTo(9 * 150, within(1e-6));
  }

  @Test
  void itsSetsPassFromNoneToAllOfTheCorners() {
    Piece pierced = Drafts.pierced(1800, 1200, 636, 504, 240, 168).pieces().getFirst();
    List<Courses.Set> sets = sets(pierced);
    assertThat(sets).anyMatch(s -> !s.places().contains(504.0) && !s.places().contains(672.0));
    assertThat(sets)
        .anySatisfy(
            s ->
                assertThat(s.places())
                    .anyMatch(v -> Math.abs(v - 504) < 1e-6)
                    .anyMatch(v -> Math.abs(v - 672) < 1e-6));
    for (Courses.Set s : sets) {
      double last = 0;
      for (double v : s.places()) {
        assertThat(v - last).isBetween(24.0, 120.5);
        last = v;
      }
      assertThat(1200 - last).isBetween(24.0, 120.5);
    }
  }

  /** Corners 10 in apart cannot both be passed: what lies between would be too narrow. */
  @Test
  void ofTwoCornersCloseToEachOtherItPassesOne() {
    Piece slot = Drafts.pierced(1800, 1200, 636, 600, 240, 10).pieces().getFirst();
    for (Courses.Set s : sets(slot)) {
      assertThat(s.places().stream().filter(v -> v > 599 && v < 611).count())
          .isLessThanOrEqualTo(1);
    }
  }
}
