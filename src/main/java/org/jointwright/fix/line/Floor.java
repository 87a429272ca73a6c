package org.jointwright.fix.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Cutouts;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/** A slab as one sees it who snaps chalk lines on it: its edges, its box-outs, its joints. */
public final class Floor {
  /** A point this near to a line stands on it, inches: as the rules forgive. */
  public static final double ON = Tolerance.LENGTH_INCHES + 1.0 / 16;

  /** Ends this near to each other meet, inches. */
  static final double MEET = Tolerance.LINE_UP.value().inches();

  /** How far beyond a line one looks whether there is concrete, inches. */
  private static final double BEYOND = 0.6;

  /** Two headings nearer than this are one, the sine: about 5 degrees. */
  private static final double SAME_WAY = 0.087;

  /**
   * One line of a slab.
   *
   * @param edge where it runs
   * @param source what it belongs to
   */
  public record Line(Edge edge, Source source) {
    /** Whether the concrete ends at it. */
    public boolean isRim() {
      return !(source instanceof Source.OnJoint);
    }
  }

  private final Slab slab;
  private final Region region;
  private final List<Cutout> cutouts;
  private final List<Line> lines = new ArrayList<>();

  private Floor(Plan plan, Slab slab) {
    this.slab = slab;
    region = slab.region();
    cutouts = Cutouts.of(plan, slab);
    addRing(slab.outline().ring(), Source.OnOutline::new);
    for (int n = 0; n < slab.openings().size(); n++) {
      int opening = n;
      addRing(slab.openings().get(n).outline().ring(), i -> new Source.OnOpening(opening, i));
    }
    cutouts.forEach(c -> addRing(c.ring(), i -> new Source.OnBoxOut(c.fixed(), i)));
    for (Joint j : slab.joints()) {
      Traced.path(j.path()).edges().stream()
          .filter(e -> e.length() > 0)
          .forEach(e -> lines.add(new Line(e, new Source.OnJoint(j.id()))));
    }
  }

  /** The floor of a slab of a plan. */
  public static Floor of(Plan plan, Slab slab) {
    return new Floor(plan, slab);
  }

  private void addRing(Ring ring, java.util.function.IntFunction<Source> source) {
    for (int i = 0; i < ring.edges().size(); i++) {
      lines.add(new Line(ring.edges().get(i), source.apply(i)));
    }
  }

  /** The slab. */
  public Slab slab() {
    return slab;
  }

  /** All its lines. */
  public List<Line> lines() {
    return List.copyOf(lines);
  }

  /** The lines where concrete ends. */
  public List<Line> rims() {
    return lines.stream().filter(Line::isRim).toList();
  }

  /** The lines that a point stands on. */
  public List<Line> at(Point p) {
    return lines.stream().filter(l -> l.edge().distance(p) <= ON).toList();
  }

  /** Whether a point stands where the concrete ends. */
  public boolean isOnRim(Point p) {
    return at(p).stream().anyMatch(Line::isRim);
  }

  /** The joint of that name. */
  public Optional<Joint> joint(String id) {
    return slab.joints().stream().filter(j -> j.id().equals(id)).findFirst();
  }

  /** Whether there is concrete at a point. */
  public boolean holds(Point p) {
    return region.contains(p) && cutouts.stream().noneMatch(c -> c.ring().contains(p));
  }

  /** The size of the slab, corner to corner of its box, inches: no line on it is longer. */
  public double far() {
    return slab.outline().ring().box().width() + slab.outline().ring().box().height();
  }

  /**
   * What a line meets that is chalked from a place, up to where the concrete ends; nothing where it
   * does not start into concrete.
   *
   * @param heading a unit vector
   * @param without the ids of joints to look through
   */
  public List<Stop> stops(Point from, Point heading, Set<String> without) {
    if (!holds(from.plus(heading.times(BEYOND)))) {
      return List.of();
    }
    Segment ray = new Segment(from, from.plus(heading.times(far())));
    record Hit(double far, Point at, Line line) {}
    List<Hit> hits = new ArrayList<>();
    for (Line line : lines) {
      if (line.source() instanceof Source.OnJoint j && without.contains(j.joint())) {
        continue;
      }
      for (Crossing c : Crossing.of(ray, line.edge())) {
        Point at = line.edge().at(c.second());
        double far = at.distance(from);
        if (far > MEET) {
          hits.add(new Hit(far, at, line));
        }
      }
    }
    hits.sort(Comparator.comparingDouble(Hit::far));
    List<Stop> stops = new ArrayList<>();
    double last = -1;
    for (Hit h : hits) {
      if (h.far - last <= BEYOND && !h.line.isRim()) {
        continue;
      }
      boolean wall = !holds(from.plus(heading.times(h.far + BEYOND)));
      Stop stop = new Stop(h.at, h.line.source(), wall, wall || endsWell(h.at, heading, h.line));
      if (h.far - last <= BEYOND) {
        stops.removeLast();
      }
      stops.add(stop);
      last = h.far;
      if (wall) {
        break;
      }
    }
    return stops;
  }

  private boolean endsWell(Point at, Point heading, Line met) {
    if (!(met.source() instanceof Source.OnJoint on)
        || joint(on.joint()).filter(j -> j.kind() == JointKind.CONTRACTION).isEmpty()) {
      return true;
    }
    return goingOn(at, heading).isPresent();
  }

  /** A joint that ends near a place and goes on from there the same way. */
  public Optional<Joint> goingOn(Point at, Point heading) {
    return slab.joints().stream()
        .filter(
            j -> {
              Edge first = j.path().edges().getFirst();
              Edge last = j.path().edges().getLast();
              return leaves(first.start(), first.direction(0), at, heading)
                  || leaves(last.end(), last.direction(1).times(-1), at, heading);
            })
        .findFirst();
  }

  private static boolean leaves(Point end, Point way, Point at, Point heading) {
    return end.distance(at) <= MEET
        && way.dot(heading) > 0
        && Math.abs(way.cross(heading)) < SAME_WAY;
  }
}
