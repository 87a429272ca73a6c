package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.View;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;

/**
 * The flags of the findings, each at its place or just beside it. Findings that are close together
 * share one, which bears all their numbers and is of the shape of the worst. Where each finds room
 * is worked out once for a view of the plan, and not each time that the hand moves over it.
 */
public final class FlagMarks {
  private static final double FLAG = 19;

  /** Half of what a stake takes in width; pixels. */
  private static final double STAKE = 1.5;

  /** A finding this near to a stake has its number on the flag of that stake; pixels. */
  private static final double NEAR = 26;

  /** A finding whose flag has no room goes on one no farther off; pixels. */
  private static final double FAR = 90;

  /** How much higher a flag flies that would lie over something, pixels; and how often. */
  private static final double HIGHER = FLAG * 1.15;

  private static final int MOST_LIFT = 2;

  /** A flag bears so many numbers; then the first and how many more there are. */
  private static final int MOST = 3;

  /** Of more findings it is not looked whether each stake is on its slab: a zoom would wait. */
  private static final int LOOKED_AT = 60;

  private static final List<Point> ASIDE =
      List.of(new Point(0, 0), new Point(10, 6), new Point(-12, 8), new Point(6, -14));

  private final Desk desk;
  private final List<Finding> findings;
  private final Map<String, Region> regions;

  /** All flags, and how the plan lay when they found room. */
  private final List<Shared> all;

  private final Viewport base;

  /** Those on the paper. */
  private final List<Shared> planted;

  private FlagMarks(Desk desk) {
    this.desk = desk;
    findings = desk.laying().laid().map(Laid::findings).orElse(List.of());
    base = desk.viewport();
    regions =
        plan(desk).slabs().stream().collect(Collectors.toMap(Slab::id, Slab::region, (a, b) -> a));
    all = standing();
    planted = onPaper();
  }

  private FlagMarks(FlagMarks before, Desk pushed) {
    desk = pushed;
    findings = before.findings;
    base = before.base;
    regions = before.regions;
    all = before.all;
    planted = onPaper();
  }

  /** The flags as they stand on the paper of a desk. */
  public static FlagMarks of(Desk desk) {
    return new FlagMarks(desk);
  }

  /** These, or those of {@code now} where its plan, what is found or how it lies is other. */
  // The same history is the same plan; comparing whole plans at each move would be slow.
  @SuppressWarnings("ReferenceEquality")
  public FlagMarks or(Desk now) {
    boolean isOther =
        desk.history() != now.history()
            || !desk.laying().laid().equals(now.laying().laid())
            || base.scale() != now.viewport().scale();
    if (isOther) {
      return of(now);
    }
    return desk.viewport().equals(now.viewport()) ? this : new FlagMarks(this, now);
  }

  /** A plan that is pushed takes its flags along as they stand. */
  private List<Shared> onPaper() {
    Point shift = desk.viewport().toPaper(base.centre()).minus(base.toPaper(base.centre()));
    Box paper = desk.viewport().paper().grown(3 * FLAG);
    return all.stream()
        .map(s -> s.aside(shift, s.lift()))
        .filter(s -> paper.holds(s.foot()))
        .toList();
  }

  /**
   * Findings that share a flag.
   *
   * @param findings which, from 0, the worst first
   * @param foot where its stake stands
   * @param lift by how many flags higher than usual it flies
   * @param text what stands on it
   * @param cloth the room of its cloth
   */
  private record Shared(List<Integer> findings, Point foot, int lift, String text, Box cloth) {
    static Shared alone(int finding, Point at) {
      return of(List.of(finding), at, 0);
    }

    private static Shared of(List<Integer> findings, Point foot, int lift) {
      String text = text(findings);
      return new Shared(findings, foot, lift, text, cloth(foot, lift, Flags.width(text, FLAG)));
    }

    private static Box cloth(Point foot, int lift, double width) {
      double top = foot.y() - lift * HIGHER - 2 * FLAG;
      return new Box(foot.x(), top, foot.x() + width, top + 1.1 * FLAG);
    }

    Shared with(List<Integer> more) {
      List<Integer> all = new ArrayList<>(findings);
      all.addAll(more);
      all.sort(null);
      return of(List.copyOf(all), foot, lift);
    }

    Shared aside(Point by, int higher) {
      Point there = foot.plus(by);
      return new Shared(findings, there, higher, text, cloth(there, higher, cloth.width()));
    }

    /** Where a stake of the usual height would stand. */
    Point hoisted() {
      return foot.minus(new Point(0, lift * HIGHER));
    }

    /** The numbers of the findings, which count from 1. */
    List<Integer> numbers() {
      return findings.stream().map(i -> i + 1).toList();
    }

    private static String text(List<Integer> findings) {
      return findings.size() <= MOST
          ? findings.stream().map(i -> Integer.toString(i + 1)).collect(Collectors.joining(","))
          : findings.getFirst() + 1 + " +" + (findings.size() - 1);
    }

    Box stake() {
      return new Box(foot.x() - STAKE, cloth().minY(), foot.x() + STAKE, foot.y());
    }
  }

  /** The flags, the stake of each first; their room is taken from {@code places}. */
  List<Mark.Group> marks(Places places) {
    List<Mark.Group> marks = new ArrayList<>();
    for (Shared s : planted) {
      places.take(s.cloth());
      places.stake(s.stake());
      Flags.Shape worst = PlanMarks.shape(findings.get(s.findings().getFirst()));
      marks.add(longer(Flags.flag(s.hoisted(), s.text(), worst, FLAG), s));
    }
    return marks;
  }

  /** A flag whose stake reaches down to its foot. */
  private static Mark.Group longer(Mark.Group flag, Shared s) {
    List<Mark> marks = new ArrayList<>(flag.marks());
    Mark stake = marks.getFirst();
    if (s.lift() > 0 && stake instanceof Mark.Line l) {
      marks.set(0, Mark.Line.of(s.foot(), l.path().end(), l.width(), l.role()));
    }
    return new Mark.Group(flag.name(), flag.title(), marks);
  }

  /** The cloths of the flags, where {@link #marks} paints them. */
  List<Box> cloths() {
    return planted.stream().map(Shared::cloth).toList();
  }

  /**
   * The numbers of the findings whose flag is at a place of the paper, from 1, the worst first;
   * empty at none.
   */
  public List<Integer> at(Point place) {
    return planted.stream()
        .filter(s -> s.cloth().holds(place))
        .findFirst()
        .map(Shared::numbers)
        .orElse(List.of());
  }

  /** The flags that have room; what has none goes on the nearest, until all that is left has. */
  private List<Shared> standing() {
    List<Shared> wanted = together();
    List<Shared> standing = new ArrayList<>();
    List<Shared> without = new ArrayList<>();
    List<Box> objects = objects();
    do {
      standing.clear();
      without.clear();
      Places places = new Places();
      for (Shared s : wanted) {
        Optional<Shared> found = best(s, places, objects);
        found.ifPresent(a -> places.take(a.cloth()));
        found.ifPresentOrElse(standing::add, () -> without.add(s));
      }
      wanted = joined(wanted, without);
    } while (!without.isEmpty());
    return List.copyOf(standing);
  }

  /** Where it has room and covers the fewest objects, the first of several. */
  private Optional<Shared> best(Shared s, Places places, List<Box> objects) {
    Optional<Shared> best = Optional.empty();
    long fewest = Long.MAX_VALUE;
    for (int lift = 0; lift <= MOST_LIFT && fewest > 0; lift++) {
      for (Point by : ASIDE) {
        Shared there = s.aside(by, lift);
        boolean isFree = places.isFree(there.cloth()) && standsOn(s, there);
        long covers = isFree ? covered(objects, there.cloth()) : fewest;
        if (covers < fewest) {
          best = Optional.of(there);
          fewest = covers;
        }
      }
    }
    return best;
  }

  /** Whether a stake set aside still stands on the slab that it is about: a walk may be narrow. */
  private boolean standsOn(Shared s, Shared aside) {
    if (aside.foot().equals(s.foot()) || findings.size() > LOOKED_AT) {
      return true;
    }
    Optional<Region> slab =
        Optional.ofNullable(regions.get(findings.get(s.findings().getFirst()).slab()));
    return slab.filter(r -> !r.contains(base.toPlan(aside.foot())))
        .filter(r -> r.contains(base.toPlan(s.foot())))
        .isEmpty();
  }

  private static long covered(List<Box> objects, Box cloth) {
    return objects.stream().filter(cloth::meets).count();
  }

  /** The plan that was judged. */
  private static Plan plan(Desk desk) {
    return desk.laying().laid().map(l -> l.layout().plan()).orElse(desk.plan());
  }

  /** What a flag would rather not cover: fixed objects and their box-outs, often what is wrong. */
  private List<Box> objects() {
    Plan plan = plan(desk);
    View view = base.view();
    return Stream.concat(
            plan.fixed().stream().map(f -> f.shape().ring()),
            plan.slabs().stream().flatMap(s -> s.boxOuts().stream()).map(b -> b.outline().ring()))
        .map(r -> view.on(r).box())
        .toList();
  }

  /** Those without room on the nearest of the others; one that has none near by has no flag. */
  private static List<Shared> joined(List<Shared> wanted, List<Shared> without) {
    List<Shared> left = new ArrayList<>(wanted);
    left.removeAll(without);
    for (Shared s : without) {
      left.stream()
          .filter(p -> p.foot().distance(s.foot()) <= FAR)
          .min(Comparator.comparingDouble(p -> p.foot().distance(s.foot())))
          .ifPresent(p -> left.set(left.indexOf(p), p.with(s.findings())));
    }
    return left;
  }

  /** The findings, those close together as one, in the order of their numbers. */
  private List<Shared> together() {
    List<Shared> shared = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      Point at = base.toPaper(findings.get(i).at());
      int near = 0;
      while (near < shared.size() && shared.get(near).foot().distance(at) > NEAR) {
        near++;
      }
      if (near < shared.size()) {
        shared.set(near, shared.get(near).with(List.of(i)));
      } else {
        shared.add(Shared.alone(i, at));
      }
    }
    return shared;
  }
}
