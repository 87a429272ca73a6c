package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Makes one slab of two that share an edge: both outlines are broken wherever the other has a
 * corner, what runs along both is left out, and the rest is one round, or one with openings.
 */
final class Uniting {
  /** Corners nearer than this are one, inches. */
  private static final double SAME = Lettering.SAME_PLACE;

  private Uniting() {}

  static Optional<Plan> of(Plan plan, String id, String otherId) {
    Slab first = Rings.slab(plan, id);
    Slab second = Rings.slab(plan, otherId);
    List<Piece> own = broken(first, second, List.of());
    List<Point> corners = own.stream().map(p -> p.edge().start()).toList();
    List<Piece> others = broken(second, first, corners);
    List<Piece> left = new ArrayList<>();
    own.stream().filter(p -> others.stream().noneMatch(q -> isBack(p, q))).forEach(left::add);
    boolean meet = left.size() < own.size();
    others.stream()
        .filter(q -> own.stream().noneMatch(p -> isBack(p, q)))
        .map(q -> new Piece(q.edge(), q.setting(), q.kept(), -1))
        .forEach(left::add);
    if (!meet || left.size() < 2) {
      return Optional.empty();
    }
    List<List<Piece>> rounds = rounds(left);
    boolean areWhole = rounds.stream().mapToInt(List::size).sum() == left.size();
    List<List<Piece>> outer = rounds.stream().filter(r -> area(r) > 0).toList();
    return !areWhole || outer.size() != 1
        ? Optional.empty()
        : Optional.of(united(plan, first, second, outer.getFirst(), rounds));
  }

  private static Plan united(
      Plan plan, Slab first, Slab second, List<Piece> outer, List<List<Piece>> rounds) {
    List<Piece> round = Piece.withoutBreaks(outer);
    List<Opening> openings = new ArrayList<>(first.openings());
    openings.addAll(second.openings());
    rounds.stream()
        .filter(r -> area(r) <= 0)
        .forEach(r -> openings.add(new Opening(backwards(r), Map.of(), Kept.NOTHING)));
    List<KeepClear> zones = new ArrayList<>(first.keepClear());
    second.keepClear().stream().filter(z -> !zones.contains(z)).forEach(zones::add);
    List<BoxOut> boxOuts = new ArrayList<>(first.boxOuts());
    boxOuts.addAll(second.boxOuts());
    Slab one =
        first
            .withOutline(Piece.outline(round))
            .withEdges(Piece.settings(round))
            .withOpenings(openings)
            .withKeepClear(zones)
            .withJointing(jointing(first.jointing(), round))
            .withLaid(locked(first, second), boxOuts);
    return plan.withSlabs(
            plan.slabs().stream()
                .filter(s -> !s.id().equals(second.id()))
                .map(s -> s.id().equals(first.id()) ? one : s)
                .toList())
        .withFixed(
            plan.fixed().stream()
                .map(f -> f.slab().equals(second.id()) ? f.inSlab(first.id()) : f)
                .toList());
  }

  private static double area(List<Piece> round) {
    return Piece.outline(round).ring().signedArea();
  }

  private static Outline backwards(List<Piece> hole) {
    List<Piece> back =
        hole.reversed().stream()
            .map(p -> new Piece(p.edge().reversed(), EdgeSetting.OPEN, Kept.NOTHING, -1))
            .toList();
    return Piece.outline(back);
  }

  private static List<Joint> locked(Slab first, Slab second) {
    List<Joint> locked = new ArrayList<>(first.lockedJoints());
    Set<String> taken = new HashSet<>();
    locked.forEach(j -> taken.add(j.id()));
    for (Joint j : second.lockedJoints()) {
      String id = j.id();
      for (int n = 1; taken.contains(id); n++) {
        id = "J" + n;
      }
      taken.add(id);
      locked.add(j.withId(id));
    }
    return locked;
  }

  private static Jointing jointing(Jointing jointing, List<Piece> round) {
    if (!(jointing.preference() instanceof Preference.LinedUpWith lined)) {
      return jointing;
    }
    for (int i = 0; i < round.size(); i++) {
      if (round.get(i).number() == lined.edge()) {
        return jointing.withPreference(new Preference.LinedUpWith(i, lined.kept()));
      }
    }
    return jointing.withPreference(Preference.SHORTEST);
  }

  /** The pieces of a slab's outline, broken at the corners of another; its own corners snapped. */
  private static List<Piece> broken(Slab slab, Slab other, List<Point> snaps) {
    List<Point> corners =
        other.outline().vertices().stream().map(v -> snapped(v.at(), snaps)).toList();
    List<Piece> broken = new ArrayList<>();
    for (Piece p : Piece.of(slab.outline(), slab.edges())) {
      Edge e = p.edge();
      Set<Double> shares = new TreeSet<>();
      for (Point c : corners) {
        boolean isInside =
            e.distance(c) <= SAME && e.start().distance(c) > SAME && e.end().distance(c) > SAME;
        if (isInside) {
          shares.add(e.nearest(c));
        }
      }
      shares.add(1.0);
      double from = 0;
      for (double to : shares) {
        Piece part = p.part(from, to);
        Point start = snapped(snapped(part.edge().start(), snaps), corners);
        Point end = snapped(snapped(part.edge().end(), snaps), corners);
        if (start.distance(end) > Sizes.SAME) {
          broken.add(part.between(start, end));
        }
        from = to;
      }
    }
    return broken;
  }

  private static Point snapped(Point p, List<Point> to) {
    return to.stream().filter(c -> c.distance(p) <= SAME).findFirst().orElse(p);
  }

  private static boolean isBack(Piece a, Piece b) {
    return a.edge().start().equals(b.edge().end())
        && a.edge().end().equals(b.edge().start())
        && a.edge().at(0.5).distance(b.edge().at(0.5)) <= SAME;
  }

  /** The pieces put end to end; what does not come back to its start is left out. */
  private static List<List<Piece>> rounds(List<Piece> pieces) {
    List<Piece> left = new ArrayList<>(pieces);
    List<List<Piece>> rounds = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Piece> round = new ArrayList<>(List.of(left.removeFirst()));
      boolean goesOn = true;
      while (goesOn && !isClosed(round)) {
        Point end = round.getLast().edge().end();
        Optional<Piece> next = left.stream().filter(p -> p.edge().start().equals(end)).findFirst();
        next.ifPresent(
            p -> {
              left.remove(p);
              round.add(p);
            });
        goesOn = next.isPresent();
      }
      if (isClosed(round) && round.size() >= 2) {
        rounds.add(round);
      }
    }
    return rounds;
  }

  private static boolean isClosed(List<Piece> round) {
    return round.getLast().edge().end().equals(round.getFirst().edge().start());
  }
}
