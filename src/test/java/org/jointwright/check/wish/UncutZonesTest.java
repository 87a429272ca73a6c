package org.jointwright.check.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.wish.UncutZones.Uncut;
import org.jointwright.practice.PanelShape;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** How long a panel must be that holds a zone: by argument, worked out by hand. */
class UncutZonesTest {
  private static final Region SLAB = Region.of(ring(0, 0, 200, 0, 200, 300, 0, 300));

  @Test
  void aZoneFromEdgeToEdgeMayTurnByThirtyDegrees() {
    Uncut u = only(SLAB, ring(-10, 140, 210, 140, 210, 160, -10, 160));
    assertThat(u.runs()).isCloseTo(200, within(1e-9));
    assertThat(u.least())
        .isCloseTo(200 * Math.cos(Math.PI / 6) + 20 * Math.sin(Math.PI / 6), within(1e-9));
    assertThat(u.at().distance(new Point(100, 150))).isCloseTo(0, within(1e-9));
  }

  @Test
  void aZoneAmidTheSlabMayTurnByFortyFive() {
    Uncut u = only(SLAB, ring(20, 140, 180, 140, 180, 160, 20, 160));
    assertThat(u.runs()).isCloseTo(160, within(1e-9));
    assertThat(u.least()).isCloseTo((160 + 20) * Math.sqrt(0.5), within(1e-9));
    // One end on the edge is not both.
    assertThat(only(SLAB, ring(-10, 140, 150, 140, 150, 160, -10, 160)).least())
        .isCloseTo((150 + 20) * Math.sqrt(0.5), within(1e-9));
  }

  @Test
  void aZoneAsWideAsLongNeedsItsLength() {
    assertThat(only(SLAB, ring(20, 20, 180, 20, 180, 180, 20, 180)).least())
        .isCloseTo(160, within(1e-9));
  }

  @Test
  void anUprightZoneIsRunAlongToo() {
    Uncut u = only(SLAB, ring(90, -10, 110, -10, 110, 310, 90, 310));
    assertThat(u.runs()).isCloseTo(300, within(1e-9));
    assertThat(u.at().distance(new Point(100, 150))).isCloseTo(0, within(1e-9));
  }

  @Test
  void aZoneThatHoldsTheWholeSlabRunsItsLength() {
    Uncut u = only(SLAB, ring(-10, -10, 210, -10, 210, 310, -10, 310));
    assertThat(u.runs()).isCloseTo(300, within(1e-9));
  }

  @Test
  void anOpeningEndsIt() {
    Region open = new Region(SLAB.outer(), List.of(ring(120, 130, 140, 130, 140, 170, 120, 170)));
    Uncut u = only(open, ring(-10, 140, 210, 140, 210, 160, -10, 160));
    assertThat(u.runs()).isCloseTo(120, within(1e-9));
  }

  @Test
  void whereItsMiddleIsOpenNothingCanBeSaid() {
    Region open = new Region(SLAB.outer(), List.of(ring(90, 130, 110, 130, 110, 170, 90, 170)));
    assertThat(UncutZones.of(open, ring(-10, 140, 210, 140, 210, 160, -10, 160))).isEmpty();
  }

  @Test
  void aZoneBesideTheSlabHoldsNothing() {
    assertThat(UncutZones.of(SLAB, ring(220, 140, 260, 140, 260, 160, 220, 160))).isEmpty();
  }

  @Test
  void aZoneThatTapersHasNoWidthToCountOn() {
    // The rectangle of its two runs, 80 by 160, is not all in the triangle.
    Uncut u = only(SLAB, ring(20, 20, 180, 20, 100, 180));
    assertThat(u.runs()).isCloseTo(160, within(1e-9));
    assertThat(u.least()).isCloseTo(160 * Math.sqrt(0.5), within(1e-9));
  }

  @Test
  void byAnArcOfTheSlabAPanelMayBeLonger() {
    List<Edge> edges = new ArrayList<>(SLAB.outer().edges());
    Segment top = (Segment) edges.get(2);
    edges.set(2, Arc.through(top.start(), new Point(100, 320), top.end()));
    Ring zone = ring(20, 140, 180, 140, 180, 160, 20, 160);
    assertThat(only(Region.of(new Ring(edges)), zone).least())
        .isCloseTo(only(SLAB, zone).least() / PanelShape.BOW.value(), within(1e-9));
  }

  private static Uncut only(Region slab, Ring zone) {
    List<Uncut> found = UncutZones.of(slab, zone);
    assertThat(found).hasSize(1);
    return found.getFirst();
  }

  private static Ring ring(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Ring.of(points);
  }
}
