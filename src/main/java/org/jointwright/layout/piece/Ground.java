package org.jointwright.layout.piece;

import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Source;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/**
 * What does not change while a slab is being cut.
 *
 * @param limits what its panels must keep to
 * @param sources what each hard edge runs along; a loop's tag {@code -1 - h} means entry {@code h}
 * @param edges the whole edge each source names, box-outs not taken away
 * @param axes its main directions, the weightiest first
 * @param loops the slab's outer line and its holes, openings and box-outs taken out
 * @param zones where no new joint may run
 * @param lead the direction that the user wants joints lined up with, before all others
 * @param mirror what every cut is made alike on both sides of, where the joints are to be symmetric
 * @param memo what is known of its pieces
 */
public record Ground(
    Limits limits,
    List<Source> sources,
    List<Edge> edges,
    List<Point> axes,
    List<Loop> loops,
    Zones zones,
    Optional<Point> lead,
    Optional<Mirror> mirror,
    Memo memo) {
  /** Copies the lists. */
  public Ground {
    sources = List.copyOf(sources);
    edges = List.copyOf(edges);
    axes = List.copyOf(axes);
    loops = List.copyOf(loops);
  }

  /** The ground with those loops. */
  public static Ground of(Limits limits, List<Source> sources, List<Edge> edges, List<Loop> loops) {
    return of(limits, sources, edges, loops, Zones.NONE, Optional.empty());
  }

  /** The same with what the user told of it: zones to keep clear, a direction that leads. */
  public static Ground of(
      Limits limits,
      List<Source> sources,
      List<Edge> edges,
      List<Loop> loops,
      Zones zones,
      Optional<Point> lead) {
    Optional<Mirror> none = Optional.empty();
    Ground bare =
        new Ground(limits, sources, edges, List.of(), loops, zones, lead, none, new Memo());
    return new Ground(
        limits, sources, edges, Axes.of(bare.piece()), loops, zones, lead, none, new Memo());
  }

  /** The same ground, every cut made alike on both sides of {@code line}, an axis of the slab. */
  public Ground mirroredAt(Mirror line) {
    return new Ground(limits, sources, edges, axes, loops, zones, lead, Optional.of(line), memo);
  }

  /** What the hard edge of that tag runs along. */
  public Source source(int tag) {
    return sources.get(-1 - tag);
  }

  /** The whole edge that a hard tag names. */
  public Edge edge(int tag) {
    return edges.get(-1 - tag);
  }

  /** Whether the tag is an edge of the outline. */
  public boolean isOutline(int tag) {
    return tag < 0 && source(tag) instanceof Source.OnOutline;
  }

  /** The whole slab as one piece. */
  public Piece piece() {
    return new Piece(this, loops.getFirst(), loops.subList(1, loops.size()));
  }

  /** The area of the slab, openings and box-outs taken out, square inches. */
  public double area() {
    return piece().area();
  }

  /**
   * The slab's own width at {@code p}, inches: the shortest chord through it, tried along {@code
   * across} and 30 degrees to both sides of it.
   */
  public double widthAt(Point p, Point across) {
    Piece whole = piece();
    double least = Double.POSITIVE_INFINITY;
    for (int k = -1; k <= 1; k++) {
      Carrier line = new Carrier.Line(p, across.turned(Math.PI * k / 6));
      least =
          Math.min(
              least,
              Chord.across(whole, line, p)
                  .map(c -> c.path().length())
                  .orElse(Double.POSITIVE_INFINITY));
    }
    return least;
  }

  /** The sharpest own corner of the slab at {@code p}, degrees; 360 where there is none. */
  double cornerAt(Point p, boolean outlineOnly) {
    double least = 360;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        boolean counts = !outlineOnly || (isOutline(loop.tag(i)) && isOutline(loop.tag(i - 1)));
        if (counts && loop.edge(i).start().distance(p) < 0.5) {
          least = Math.min(least, loop.angle(i));
        }
      }
    }
    return least;
  }

  /** Whether an edge is a bow of the slab's own edge. */
  static boolean isBow(Loop loop, int i) {
    return loop.isHard(i) && loop.edge(i) instanceof Arc;
  }
}
