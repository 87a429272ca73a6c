package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** How a joint divides the way between what runs beside it. */
final class Division {
  /** Lines that turn from each other by less run beside each other. */
  private static final double BESIDE = Math.sin(Math.toRadians(2));

  /** Where along the joint one looks to both sides, its middle first. */
  private static final double[] LOOKS = {0.5, 0.25, 0.75};

  private final Ground ground;
  private final Joint joint;
  private final List<Map.Entry<Edge, Source>> others;

  private Division(Ground ground, Joint joint) {
    this.ground = ground;
    this.joint = joint;
    others = ground.jointLines().stream().filter(l -> !l.getValue().equals(own())).toList();
  }

  /** What it divides: equal parts where it does so, else what it stands between. */
  static Optional<Origin> of(Ground ground, Joint joint) {
    Division work = new Division(ground, joint);
    return joint.path().edges().size() == 1 && joint.path().edges().getFirst() instanceof Segment s
        ? work.straight(upwards(s))
        : Optional.empty();
  }

  /** To the right, or up: what is found must not hang on which end of the joint comes first. */
  private static Segment upwards(Segment s) {
    Point d = s.end().minus(s.start());
    boolean backwards = d.x() < -1e-6 || (d.x() <= 1e-6 && d.y() < 0);
    return backwards ? s.reversed() : s;
  }

  private Optional<Origin> straight(Segment s) {
    Optional<Origin> best = rim(s.start()).or(() -> rim(s.end()));
    if (best.isPresent()) {
      return best;
    }
    List<Stops> looks = new ArrayList<>();
    for (double share : LOOKS) {
      looks.add(across(s, share));
    }
    Optional<Origin> even =
        looks.stream()
            .flatMap(l -> l.even(ground.anchors(), own()).stream())
            .max(Comparator.comparingInt(Origin.Even::of).thenComparingDouble(Origin.Even::whole))
            .map(e -> e);
    return even.or(() -> side(s.start()))
        .or(() -> side(s.end()))
        .or(() -> looks.stream().flatMap(l -> l.between().stream()).findFirst());
  }

  /** What is met on the way square to a joint, to its left (below 0) and to its right. */
  private Stops across(Segment s, double share) {
    Stops stops = new Stops();
    Point from = s.at(share);
    Point u = s.direction(0);
    for (int side : new int[] {-1, 1}) {
      Point way = u.left().times(-side);
      Segment look = new Segment(from, from.plus(way.times(reach())));
      double wall = Double.POSITIVE_INFINITY;
      Optional<Side> end = Optional.empty();
      for (Side edge : ground.sides()) {
        for (Crossing c : Crossing.of(look, edge.edge())) {
          double at = c.first() * look.length();
          if (at > Ground.ON && at < wall - 1e-6) {
            wall = at;
            end = Optional.of(edge);
          }
        }
      }
      double last = wall;
      end.ifPresent(e -> stops.add(side * last, e.source(), runsBeside(u, e.edge(), look, last)));
      for (Map.Entry<Edge, Source> line : others) {
        for (Crossing c : Crossing.of(look, line.getKey())) {
          double at = c.first() * look.length();
          boolean beside = Math.abs(line.getKey().direction(c.second()).cross(u)) <= BESIDE;
          if (beside && at < wall - Ground.ON) {
            stops.add(side * at, line.getValue(), /* beside= */ true);
          }
        }
      }
    }
    return stops;
  }

  private static boolean runsBeside(Point u, Edge wall, Segment look, double at) {
    Point d = wall.direction(wall.nearest(look.at(at / look.length())));
    return Math.abs(d.cross(u)) <= BESIDE;
  }

  private Source own() {
    return new Source.OnJoint(joint.id());
  }

  private double reach() {
    var box = ground.slab().outline().ring().box();
    return 1 + Math.hypot(box.width(), box.height());
  }

  /** The equal parts of an arc of the edge on which a radial joint ends. */
  private Optional<Origin> rim(Point end) {
    for (List<Side> round : ground.rounds()) {
      for (int i = 0; i < round.size(); i++) {
        if (round.get(i).edge() instanceof Arc a
            && a.distance(end) <= Ground.ON
            && isRadial(a, end)) {
          return onRun(round, i, a, end);
        }
      }
    }
    return Optional.empty();
  }

  /** The equal parts of a straight side on which the joint ends, where nothing runs beside it. */
  private Optional<Origin> side(Point end) {
    for (List<Side> round : ground.rounds()) {
      for (int i = 0; i < round.size(); i++) {
        if (round.get(i).edge() instanceof Segment s
            && s.distance(end) <= Ground.ON
            && s.start().distance(end) > 1
            && s.end().distance(end) > 1) {
          return onRun(round, i, s, end).filter(o -> o instanceof Origin.Even);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isRadial(Arc a, Point end) {
    Edge e = joint.path().edges().getFirst();
    return Math.abs(end.minus(a.centre()).unit().cross(e.direction(0))) <= BESIDE;
  }

  /** What it divides of a run of edges that are one line or one circle. */
  private Optional<Origin> onRun(List<Side> round, int index, Edge run, Point end) {
    int n = round.size();
    int first = index;
    while (isSame(round.get(Math.floorMod(first - 1, n)).edge(), run) && index - first < n - 1) {
      first--;
    }
    int last = index;
    while (isSame(round.get(Math.floorMod(last + 1, n)).edge(), run) && last - first < n - 1) {
      last++;
    }
    boolean closed = last - first == n - 1;
    double before = 0;
    double self = 0;
    List<Map.Entry<Double, Source>> marks = new ArrayList<>();
    for (int i = first; i <= last; i++) {
      Edge piece = round.get(Math.floorMod(i, n)).edge();
      if (piece.distance(end) <= Ground.ON) {
        self = before + piece.nearest(end) * piece.length();
      }
      for (Joint j : ground.joints()) {
        for (Point p : List.of(j.path().start(), j.path().end())) {
          if (!j.id().equals(joint.id()) && piece.distance(p) <= Ground.ON) {
            marks.add(
                Map.entry(before + piece.nearest(p) * piece.length(), new Source.OnJoint(j.id())));
          }
        }
      }
      before += piece.length();
    }
    return closed
        ? roundCircle(marks, self, before, round.get(index).source())
        : alongRun(
            marks,
            self,
            before,
            round.get(Math.floorMod(first - 1, n)).source(),
            round.get(Math.floorMod(last + 1, n)).source());
  }

  private static boolean isSame(Edge e, Edge run) {
    return switch (run) {
      case Segment s ->
          e instanceof Segment t
              && t.length() > 0
              && s.direction(0).dot(t.direction(0)) > 0
              && Math.abs(s.direction(0).cross(t.direction(0))) <= BESIDE;
      case Arc arc ->
          e instanceof Arc a
              && a.centre().distance(arc.centre()) < 1
              && Math.abs(a.radius() - arc.radius()) < 1
              && a.sweep() * arc.sweep() > 0;
    };
  }

  private Optional<Origin> alongRun(
      List<Map.Entry<Double, Source>> marks, double self, double whole, Source from, Source to) {
    Stops stops = new Stops();
    stops.add(-self, from, /* beside= */ true);
    stops.add(whole - self, to, /* beside= */ true);
    marks.forEach(m -> stops.add(m.getKey() - self, m.getValue(), /* beside= */ true));
    return stops.even(ground.anchors(), own()).<Origin>map(e -> e).or(stops::between);
  }

  private static Optional<Origin> roundCircle(
      List<Map.Entry<Double, Source>> marks, double self, double whole, Source rim) {
    List<Double> places = new ArrayList<>(List.of(self));
    marks.forEach(m -> places.add(m.getKey()));
    places.sort(null);
    List<Double> apart = new ArrayList<>();
    for (double p : places) {
      if (apart.isEmpty() || p - apart.getLast() > Ground.ON) {
        apart.add(p);
      }
    }
    if (apart.size() > 1 && apart.getFirst() + whole - apart.getLast() <= Ground.ON) {
      apart.removeLast();
    }
    double least = whole;
    double most = 0;
    for (int i = 0; i < apart.size(); i++) {
      double next = i + 1 < apart.size() ? apart.get(i + 1) : apart.getFirst() + whole;
      least = Math.min(least, next - apart.get(i));
      most = Math.max(most, next - apart.get(i));
    }
    return apart.size() > 1 && most - least <= 1.1
        ? Optional.of(new Origin.EvenRound(Where.ALONG, rim, apart.size()))
        : Optional.empty();
  }
}
