package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.joint.Source;
import org.jointwright.layout.boxout.Around;
import org.jointwright.layout.boxout.BoxOuts;
import org.jointwright.layout.boxout.Choice;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.search.Chalked;
import org.jointwright.layout.search.Effort;
import org.jointwright.layout.search.Score;
import org.jointwright.layout.search.Search;
import org.jointwright.layout.search.Taste;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cost;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Lays one slab, all but the joints along its edges. */
record SlabLayer(Plan plan, Slab slab, Neighbours neighbours, Effort effort, BooleanSupplier goOn) {
  /** So many sets of box-outs are tried on a slab of house size. */
  private static final int TRIES = 8;

  /** What a second look must leave of the first choice to be taken. */
  private static final double CLEARLY = 0.8;

  /** Of more objects than these each set takes too long to look at twice. */
  private static final int LOOKED_AT = 2;

  /** A quick draft this much longer than the slab needs calls for a second look. */
  private static final double POOR = 1.25;

  /** Of a slab with many axes so many are tried. */
  private static final int AXES = 2;

  Slab lay() {
    Bench bench = Bench.at(slab.outline().ring().box());
    Score score = new Score(neighbours.meetings(bench), Seen.from(plan, slab, bench), goOn);
    List<List<Around>> choices =
        BoxOuts.choices(slab, plan.fixedIn(slab.id()), plan.unit().isMetric());
    List<BoxOut> boxes =
        new Choice(choices, tries(choices.size())).best(b -> quickly(b, bench, score));
    if (isPoor(boxes, choices, bench, score)) {
      List<BoxOut> second =
          new Choice(choices, tries(choices.size())).best(b -> firmly(b, bench, score));
      // What saves little may well do so by turns and flat angles that the eye pays for.
      if (firmly(second, bench, score) < CLEARLY * firmly(boxes, bench, score)) {
        boxes = second;
      }
    }
    List<Draft> drafts =
        parts(boxes, bench, score).drafts((ground, own) -> best(start(ground, bench), own, bench));
    List<Joint> joints = new ArrayList<>(slab.lockedJoints());
    for (Draft best : drafts) {
      for (Laid l : best.lines()) {
        joints.addAll(
            l.locked()
                ? beyondLocked(l, bench)
                : List.of(contraction(bench.out(l.path()), purpose(best.ground(), l))));
      }
    }
    joints.addAll(BoxOuts.filler(boxes, slab));
    return slab.withLaid(joints, boxes);
  }

  private Parts parts(List<BoxOut> boxes, Bench bench, Score score) {
    return new Parts(Grounds.parts(slab, boxes, Limits.of(slab), bench), score);
  }

  /** The shortest draft, or one to the user's taste where there is one that is worth it. */
  private Draft best(Draft start, Score score, Bench bench) {
    boolean metric = plan.unit().isMetric();
    Draft shortest =
        even(Chalked.or(Search.best(start, score, metric, effort), start, score), start, score);
    Taste taste = taste(bench, Taste.WORTH * shortest.tally().cost());
    if (taste instanceof Taste.Shortest) {
      return shortest;
    }
    Draft other = Search.best(start, score.tasting(taste), metric, effort);
    return taste.prefers(other, shortest) ? other : shortest;
  }

  /** The same where the slab mirrors, laid to mirror too unless that costs clearly more. */
  private Draft even(Draft shortest, Draft start, Score score) {
    List<Mirror> axes = Mirrors.of(slab, start, score);
    if (axes.stream().anyMatch(m -> Mirrors.isEven(shortest, m))) {
      return shortest;
    }
    double cost = shortest.tally().cost();
    double most =
        score.of(shortest)
            + Math.min(Cost.MIRRORED.value() * cost, Cost.MIRRORED_MOST.value().inches() / 12);
    Draft best = shortest;
    for (Mirror m : axes.subList(0, Math.min(AXES, axes.size()))) {
      Draft d = Search.best(start.mirroredAt(m), score, plan.unit().isMetric(), effort);
      if (d.tally().excess() <= best.tally().excess() && score.of(d) <= most) {
        best = d;
        most = score.of(d) - 1e-6;
      }
    }
    return best;
  }

  /**
   * What the user would rather have than the fewest feet.
   *
   * @param most what the layout may cost, ft
   */
  Taste taste(Bench bench, double most) {
    return switch (slab.jointing().preference()) {
      case Preference.Overall.SHORTEST -> new Taste.Shortest();
      case Preference.Overall.SQUAREST -> new Taste.Squarest(most);
      case Preference.LinedUpWith lined -> {
        List<Edge> edges = slab.outline().ring().edges();
        // The plan may have lost edges since the choice was made.
        if (lined.edge() >= edges.size()) {
          yield new Taste.Shortest();
        }
        Edge edge = bench.in(edges.get(lined.edge()));
        yield new Taste.LinedUp(edge.end().minus(edge.start()).unit(), most);
      }
    };
  }

  /** How good a layout with those box-outs is hoped to be; less is better. */
  private double quickly(List<BoxOut> boxes, Bench bench, Score score) {
    Parts parts = parts(boxes, bench, score);
    return parts.value(parts.drafts((ground, own) -> Search.quick(start(ground, bench), own)));
  }

  /**
   * Whether what came quickly is far from what the slab needs, on a slab small enough to look
   * again: a quick draft may miss what a box-out is good for.
   */
  private boolean isPoor(List<BoxOut> boxes, List<List<Around>> choices, Bench bench, Score score) {
    if (!effort.thorough()
        || choices.size() > LOOKED_AT
        || tries(choices.size()) < TRIES
        || choices.stream().allMatch(c -> c.size() == 1)) {
      return false;
    }
    double need =
        Grounds.parts(slab, boxes, Limits.of(slab), bench).stream()
            .mapToDouble(g -> Search.need(start(g, bench)))
            .sum();
    return quickly(boxes, bench, score) > POOR * need;
  }

  /** How good a layout with those box-outs is, by a search that climbs but does not go far. */
  private double firmly(List<BoxOut> boxes, Bench bench, Score score) {
    Parts parts = parts(boxes, bench, score);
    boolean metric = plan.unit().isMetric();
    return parts.value(
        parts.drafts(
            (ground, own) -> Search.best(start(ground, bench), own, metric, Effort.FIRST)));
  }

  /** A part of the slab with the user's joints in it. */
  private Draft start(Ground ground, Bench bench) {
    Draft start = Draft.of(ground);
    for (Joint j : slab.lockedJoints()) {
      for (Edge e : j.path().edges()) {
        start = start.hold(bench.in(e), j.kind());
      }
    }
    return start;
  }

  /** How many sets of box-outs are tried: fewer where each takes longer to lay. */
  private int tries(int objects) {
    double squares = slab.region().area() / Math.pow(Limits.of(slab).spacing(), 2);
    return objects == 0 ? 1 : squares + objects < 12 ? TRIES : squares + objects < 40 ? 4 : 2;
  }

  private static Joint contraction(Edge path, Purpose purpose) {
    return Joint.of("", JointKind.CONTRACTION, Path.of(path), purpose);
  }

  /** What a joint is there for: an inside corner it ends at comes before mere spacing. */
  private static Purpose purpose(Ground ground, Laid line) {
    Purpose found = Purpose.SPACING;
    for (boolean last : new boolean[] {false, true}) {
      int tag = line.tag(last);
      if (tag < 0 && ground.source(tag) instanceof Source.OnBoxOut) {
        return Purpose.BOX_OUT;
      }
    }
    for (Loop loop : ground.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        Point at = loop.edge(i).start();
        boolean ends = line.end(false).distance(at) < 0.5 || line.end(true).distance(at) < 0.5;
        if (ends && loop.angle(i) > Angles.INSIDE.value()) {
          found = Purpose.INSIDE_CORNER;
        }
      }
    }
    return found;
  }

  private static boolean runsAlong(Joint joint, Edge line) {
    Carrier carrier = Carriers.of(line);
    return List.of(joint.path().start(), joint.path().end()).stream()
        .allMatch(p -> carrier.at(carrier.place(p)).distance(p) < 0.1);
  }

  /** What the engine had to add to a locked joint so that it runs from edge to edge. */
  private List<Joint> beyondLocked(Laid line, Bench bench) {
    // Locked joints may cross where one was seeded: the one that runs along the line is meant.
    Optional<Joint> own =
        slab.lockedJoints().stream()
            .filter(j -> j.path().distance(bench.out(line.move().seed())) < 0.01)
            .filter(j -> runsAlong(j, bench.out(line.path())))
            .findFirst();
    if (own.isEmpty() || !(bench.out(line.path()) instanceof Segment whole)) {
      return List.of();
    }
    Carrier carrier = Carrier.Line.through(whole.start(), whole.end());
    double a = carrier.place(own.get().path().start());
    double b = carrier.place(own.get().path().end());
    double low = Math.min(a, b);
    double high = Math.max(a, b);
    List<Joint> more = new ArrayList<>();
    if (carrier.place(whole.start()) < low - 1) {
      more.add(
          Joint.of(
              "", line.kind(), Path.straight(whole.start(), carrier.at(low)), Purpose.SPACING));
    }
    if (carrier.place(whole.end()) > high + 1) {
      more.add(
          Joint.of("", line.kind(), Path.straight(carrier.at(high), whole.end()), Purpose.SPACING));
    }
    return more;
  }
}
