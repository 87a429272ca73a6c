package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Some rules worked out from polygons alone, with figures of their own: how long (M1), how
 * stretched (M2), whether it keeps an inside corner (M3), how sharp (M4), how narrow (M5) and how
 * whole (M8) a panel is. The limits stand here anew: a slip in the program's would else be one here
 * too.
 */
final class SecondOpinion {
  private static final double TIE = 1.005;
  private static final double TIE_MARGIN = 2e-4;

  /** Along an arc the rectangles that tie depend on how fine its chords are. */
  private static final double TIE_MARGIN_OF_ARCS = 4e-3;

  private static final double TINY = 20;

  /** Corners this near each other may count as one, inches. */
  private static final double TOGETHER = 0.7;

  private static final double TIGHT = 6.5;

  /** Chords drawn anew along a piece of an arc stand no farther off its other chords, inches. */
  private static final double ON = 2.5e-3;

  /** A turn too small for a corner may still count with one beside it, degrees. */
  private static final double ANGLE_MARGIN = 1.5;

  /** A corner joint's ends stand this near the tip that it cuts off, inches. */
  private static final double REACH = 0.6;

  private final Slab slab;
  private final SecondTurns turns;
  private final IndexedFacetDistance edge;
  private final IndexedFacetDistance outline;
  private final List<LineString> arcs = new ArrayList<>();
  private final IndexedFacetDistance bows;
  private boolean tight;

  SecondOpinion(Slab slab, SecondFaces faces) {
    this.slab = slab;
    this.turns = new SecondTurns(slab);
    this.edge = new IndexedFacetDistance(faces.slab().getBoundary());
    this.outline = new IndexedFacetDistance(faces.slab().getExteriorRing());
    addArcs(slab.outline().ring().edges());
    slab.openings().forEach(o -> addArcs(o.outline().ring().edges()));
    this.bows =
        new IndexedFacetDistance(Planar.JTS.createMultiLineString(arcs.toArray(LineString[]::new)));
  }

  private void addArcs(List<Edge> edges) {
    for (Edge e : edges) {
      if (e instanceof Arc a) {
        // Where it bows inwards it is a corner with its edge rounded off.
        tight |= a.radius() < TIGHT;
        Coordinate[] points = Planar.points(e).toArray(Coordinate[]::new);
        arcs.add(Planar.JTS.createLineString(points));
      }
    }
  }

  /** The verdicts on a panel by rule. */
  Map<String, Verdict> on(Polygon panel) {
    Map<String, Verdict> verdicts = new TreeMap<>();
    if (mayBeTip(panel)) {
      List.of("M1", "M2", "M3", "M4", "M5", "M8").forEach(r -> verdicts.put(r, Verdict.UNSURE));
      return verdicts;
    }
    Rectangles rectangles = Rectangles.round(panel);
    verdicts.put("M1", tooLong(panel, rectangles));
    verdicts.put("M2", tooStretched(panel, rectangles));
    verdicts.put("M3", turns.on(panel));
    verdicts.put("M4", tooSharp(panel));
    verdicts.put("M5", tooNarrow(panel));
    verdicts.put("M8", notWhole(panel, rectangles));
    if (touchesItself(panel)) {
      // Polygons hold such a place as a hole that touches the outer ring: its angles are others.
      List.of("M3", "M4").forEach(r -> verdicts.put(r, Verdict.UNSURE));
    }
    if (panel.getArea() < TINY && isBowed(panel)) {
      // Its arcs are a few chords, which rectangles flush with them cannot follow.
      List.of("M1", "M2", "M8").forEach(r -> verdicts.put(r, Verdict.UNSURE));
    }
    return verdicts;
  }

  /** Tips that corner joints cut off are excused from most rules. */
  private boolean mayBeTip(Polygon panel) {
    return slab.joints().stream()
        .filter(j -> j.purpose() == Purpose.CORNER)
        .map(j -> Planar.line(j.path()))
        .anyMatch(
            l ->
                panel.distance(l.getStartPoint()) < REACH
                    && panel.distance(l.getEndPoint()) < REACH);
  }

  /** 30 times the thickness, 15 ft at most, or what the plan says; 3 % more with an arc. */
  private Verdict tooLong(Polygon panel, Rectangles rectangles) {
    double most =
        slab.jointing()
            .maxSpacing()
            .map(l -> l.inches())
            .orElse(Math.min(180, 30 * slab.thickness().inches()));
    double low = rectangles.length(TIE + tieMargin());
    double high = rectangles.length(TIE - tieMargin());
    Verdict straight = Verdict.over(low, high, most + 0.5, 0.1);
    return straight == Verdict.KEPT || !isBowed(panel)
        ? straight
        : Verdict.over(low, high, 1.03 * most + 0.5, 0.1);
  }

  private Verdict tooStretched(Polygon panel, Rectangles rectangles) {
    double usual = slab.jointing().aspect().orElse(1.5);
    double low = rectangles.aspect(TIE + tieMargin());
    double high = rectangles.aspect(TIE - tieMargin());
    // Rectangles flush with chords miss the least one round an arc by a little.
    double coarse = isBowed(panel) ? 0.012 : 0.002;
    double margin = coarse + 0.1 * high * high / rectangles.length(TIE);
    Verdict plain = Verdict.over(low, high, usual + 0.01, margin);
    if (plain != Verdict.BROKEN) {
      return plain;
    }
    double sharpest = 180;
    for (LinearRing ring : Corners.rings(panel)) {
      for (Corner c : corners(ring, panel)) {
        if (!c.clear() && c.outline()) {
          return Verdict.UNSURE;
        }
        if (c.outline()) {
          sharpest = Math.min(sharpest, c.interior());
        }
      }
    }
    if (Math.abs(sharpest - 36) < 1 || Math.abs(sharpest - 76) < 1) {
      return Verdict.UNSURE;
    }
    if (sharpest < 36) {
      return Verdict.KEPT;
    }
    return sharpest < 76
        ? Verdict.over(low, high, Math.max(usual, 2) + 0.01, margin)
        : Verdict.BROKEN;
  }

  private Verdict tooSharp(Polygon panel) {
    boolean unsure = false;
    for (LinearRing ring : Corners.rings(panel)) {
      for (Corner c : corners(ring, panel)) {
        if (c.whole() && c.clear()) {
          continue;
        }
        if (!c.clear() || Math.abs(c.interior() - 59) < ANGLE_MARGIN) {
          unsure = true;
        } else if (c.interior() < 59) {
          return Verdict.BROKEN;
        }
      }
    }
    return unsure ? Verdict.UNSURE : Verdict.KEPT;
  }

  /** Where the slab itself may be that narrow it is for another to say. */
  private static Verdict tooNarrow(Polygon panel) {
    double width = new MinimumDiameter(panel).getLength();
    return width > 24 - 0.5 + 0.1 ? Verdict.KEPT : Verdict.UNSURE;
  }

  private double tieMargin() {
    return arcs.isEmpty() ? TIE_MARGIN : TIE_MARGIN_OF_ARCS;
  }

  private static boolean touchesItself(Polygon panel) {
    for (int i = 0; i < panel.getNumInteriorRing(); i++) {
      if (panel.getInteriorRingN(i).distance(panel.getExteriorRing()) < 1e-6) {
        return true;
      }
    }
    return false;
  }

  private Verdict notWhole(Polygon panel, Rectangles rectangles) {
    GeometryFactory jts = panel.getFactory();
    if (touchesItself(panel)) {
      // It hangs together at one point only: a hole to one, a way round to another.
      return Verdict.UNSURE;
    }
    for (int i = 0; i < panel.getNumInteriorRing(); i++) {
      if (jts.createPolygon(panel.getInteriorRingN(i)).getArea() > 0.3) {
        return Verdict.BROKEN;
      }
    }
    if (panel.getNumInteriorRing() > 0) {
      return Verdict.UNSURE;
    }
    double one = panel.getArea() / rectangles.area(TIE + tieMargin());
    double other = panel.getArea() / rectangles.area(TIE - tieMargin());
    return Verdict.over(
        -Math.max(one, other),
        -Math.min(one, other),
        -0.45,
        0.002 + 0.07 * panel.getLength() / rectangles.area(TIE));
  }

  private boolean isBowed(Polygon panel) {
    if (arcs.isEmpty()) {
      return false;
    }
    for (LinearRing ring : Corners.rings(panel)) {
      for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
        if (lies(side(ring, i), bows)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a side lies on a line, both ends and middle. */
  private static boolean lies(LineString side, IndexedFacetDistance on) {
    return on.distance(side.getStartPoint()) < ON
        && on.distance(side.getEndPoint()) < ON
        && on.distance(side.getCentroid()) < ON;
  }

  /**
   * A corner of a panel.
   *
   * @param interior degrees
   * @param clear whether no other is so near that the two may count as one
   * @param whole whether no joint meets it
   * @param outline whether both its sides are the slab's outline
   */
  private record Corner(double interior, boolean clear, boolean whole, boolean outline) {}

  private List<Corner> corners(LinearRing ring, Polygon panel) {
    List<Corner> corners = new ArrayList<>();
    int n = ring.getNumPoints() - 1;
    boolean isRim = ring != panel.getExteriorRing();
    // JTS runs its rings either way; the panel lies to the left of an outer ring run leftwards.
    double sign = Orientation.isCCW(ring.getCoordinates()) == isRim ? -1 : 1;
    for (int i = 0; i < n; i++) {
      double turn = sign * Corners.turn(ring, i);
      if (Math.abs(turn) > Corners.CHORD_TURN) {
        LineString in = side(ring, (i + n - 1) % n);
        LineString out = side(ring, i);
        corners.add(
            new Corner(
                180 - turn,
                !tight && isClear(ring, i),
                lies(in, edge) && lies(out, edge),
                lies(in, outline) && lies(out, outline)));
      }
    }
    return corners;
  }

  private static LineString side(LinearRing ring, int i) {
    return Planar.JTS.createLineString(
        new Coordinate[] {ring.getCoordinateN(i), ring.getCoordinateN(i + 1)});
  }

  /** Whether no other turn, and nothing that may be one, lies near a point along the ring. */
  private static boolean isClear(LinearRing ring, int i) {
    return isClear(ring, i, 1) && isClear(ring, i, -1);
  }

  private static boolean isClear(LinearRing ring, int i, int step) {
    int n = ring.getNumPoints() - 1;
    double way = 0;
    for (int k = i, done = 0; done < n; done++) {
      int next = Math.floorMod(k + step, n);
      way += ring.getCoordinateN(k).distance(ring.getCoordinateN(next));
      if (way > TOGETHER) {
        return true;
      }
      if (Math.abs(Corners.turn(ring, next)) > Corners.CHORD_TURN) {
        return false;
      }
      k = next;
    }
    return false;
  }
}
