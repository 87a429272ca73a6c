package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Outline;
import org.jointwright.practice.BoxOuts;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Objects so close together that their box-outs would overlap or leave a sliver between them: one
 * box-out round both, or box-outs that stand clear of each other.
 */
final class Together {
  /** Objects nearer to each other than this are looked at together, inches: the least panel. */
  private static final double CLOSE = 24;

  /** Objects farther from each other have box-outs that cannot meet, inches. */
  private static final double FAR = 2 * BoxOuts.REACH.value().inches();

  /** Two box-outs stand this far apart at least, inches: else the form between them is no form. */
  private static final double APART = 2;

  /** Of one way to share no more are kept, and of all ways together. */
  private static final int MOST_OF_ONE = 4;

  private static final int MOST = 8;

  private static final double CHORD_ERROR = 0.1;

  private final Function<List<Ring>, List<Outline>> shapes;
  private final List<FixedObject> objects;

  private Together(Function<List<Ring>, List<Outline>> shapes, List<FixedObject> objects) {
    this.shapes = shapes;
    this.objects = objects;
  }

  /**
   * For each object by itself, and for each group that stands close together, the ways to box it
   * out.
   *
   * @param shapes the outlines that may stand round the objects of one box-out
   */
  static List<List<Around>> ways(
      List<FixedObject> objects, Function<List<Ring>, List<Outline>> shapes) {
    List<List<Around>> found = new ArrayList<>();
    List<List<FixedObject>> groups =
        grouped(objects.stream().map(List::of).toList(), (a, b) -> meet(a, b, shapes));
    for (List<FixedObject> group : groups) {
      List<Around> ways = new Together(shapes, group).ways();
      if (!ways.isEmpty()) {
        found.add(ways);
      }
    }
    return found;
  }

  /** Whether an object stands so near to another that their box-outs might meet. */
  static boolean isClose(FixedObject object, List<FixedObject> all) {
    Ring ring = object.shape().ring();
    return all.stream()
        .anyMatch(
            o ->
                !o.id().equals(object.id())
                    && o.shape().ring().box().grown(FAR).meets(ring.box())
                    && gap(o.shape().ring(), ring) <= FAR);
  }

  private interface Link {
    boolean joins(FixedObject a, FixedObject b);
  }

  /** The groups put together wherever one of each is linked to one of the other. */
  private static List<List<FixedObject>> grouped(List<List<FixedObject>> groups, Link link) {
    List<List<FixedObject>> all = new ArrayList<>(groups);
    for (int i = 0; i < all.size(); i++) {
      for (int k = i + 1; k < all.size(); k++) {
        List<FixedObject> other = all.get(k);
        if (all.get(i).stream().anyMatch(a -> other.stream().anyMatch(b -> link.joins(a, b)))) {
          List<FixedObject> both = new ArrayList<>(all.get(i));
          both.addAll(other);
          all.set(i, both);
          all.remove(k);
          k = i;
        }
      }
    }
    return all;
  }

  private static boolean meet(
      FixedObject a, FixedObject b, Function<List<Ring>, List<Outline>> shapes) {
    double gap = gap(a.shape().ring(), b.shape().ring());
    if (gap < CLOSE) {
      return true;
    }
    if (gap > FAR) {
      return false;
    }
    List<Outline> others = shapes.apply(List.of(b.shape().ring()));
    return shapes.apply(List.of(a.shape().ring())).stream()
        .anyMatch(s -> others.stream().anyMatch(o -> gap(s.ring(), o.ring()) < APART));
  }

  /** How far two rings stand apart, inches; 0 where they overlap. */
  private static double gap(Ring a, Ring b) {
    return Math.min(oneWay(a, b), oneWay(b, a));
  }

  private static double oneWay(Ring a, Ring b) {
    double least = Double.POSITIVE_INFINITY;
    for (Point p : Chords.round(a, CHORD_ERROR)) {
      least = Math.min(least, b.contains(p) ? 0 : b.distance(p));
    }
    for (var e : a.edges()) {
      for (var f : b.edges()) {
        least = org.jointwright.shape.Crossing.of(e, f).isEmpty() ? least : 0;
      }
    }
    return least;
  }

  private List<Around> ways() {
    List<Around> found = new ArrayList<>();
    // The most shared first: a strip between two box-outs is what breaks.
    for (List<List<FixedObject>> split : splits().reversed()) {
      found.addAll(ways(split));
    }
    if (found.isEmpty()) {
      // Nothing stands clear: each its own, and the checks say what is wrong with it.
      Around each = Around.all();
      for (FixedObject f : objects) {
        List<Outline> own = shapes.apply(List.of(f.shape().ring()));
        each = own.isEmpty() ? each : Around.all(each, Around.shared(List.of(f), own.getFirst()));
      }
      return each.boxes().isEmpty() ? List.of() : List.of(each);
    }
    return found.subList(0, Math.min(objects.size() == 1 ? found.size() : MOST, found.size()));
  }

  /** From each alone to all together, the nearest put together first. */
  private List<List<List<FixedObject>>> splits() {
    List<List<List<FixedObject>>> found = new ArrayList<>();
    found.add(objects.stream().map(List::of).toList());
    List<Double> gaps = new ArrayList<>();
    for (FixedObject a : objects) {
      for (FixedObject b : objects.subList(objects.indexOf(a) + 1, objects.size())) {
        gaps.add(gap(a.shape().ring(), b.shape().ring()));
      }
    }
    gaps.sort(null);
    for (double most : gaps) {
      List<List<FixedObject>> next =
          grouped(
              found.getFirst(), (a, b) -> gap(a.shape().ring(), b.shape().ring()) <= most + 1e-6);
      if (next.size() < found.getLast().size()) {
        found.add(next);
      }
    }
    return found;
  }

  /** The ways with those objects each sharing one box-out. */
  private List<Around> ways(List<List<FixedObject>> split) {
    List<List<Around>> each = new ArrayList<>();
    for (List<FixedObject> some : split) {
      List<Around> own =
          shapes.apply(some.stream().map(f -> f.shape().ring()).toList()).stream()
              .map(o -> Around.shared(some, o))
              .toList();
      if (own.isEmpty() && some.size() > 1) {
        return List.of();
      }
      if (!own.isEmpty()) {
        each.add(own);
      }
    }
    if (each.isEmpty()) {
      return List.of();
    }
    List<int[]> picks = new ArrayList<>(List.of(new int[0]));
    for (List<Around> own : each) {
      List<int[]> longer = new ArrayList<>();
      for (int[] pick : picks) {
        for (int i = 0; i < own.size(); i++) {
          int[] one = java.util.Arrays.copyOf(pick, pick.length + 1);
          one[pick.length] = i;
          if (isClear(each, one)) {
            longer.add(one);
          }
        }
      }
      longer.sort(Comparator.comparingInt(p -> java.util.Arrays.stream(p).sum()));
      picks = longer.subList(0, Math.min(64, longer.size()));
    }
    int most = each.size() == 1 ? each.getFirst().size() : MOST_OF_ONE;
    return picks.stream().limit(most).map(p -> picked(each, p)).toList();
  }

  private static boolean isClear(List<List<Around>> each, int[] pick) {
    int last = pick.length - 1;
    Ring ring = ring(each, pick, last);
    for (int i = 0; i < last; i++) {
      if (gap(ring, ring(each, pick, i)) < APART) {
        return false;
      }
    }
    return true;
  }

  private static Ring ring(List<List<Around>> each, int[] pick, int i) {
    return each.get(i).get(pick[i]).boxes().getFirst().outline().ring();
  }

  private static Around picked(List<List<Around>> each, int[] pick) {
    Around all = Around.all();
    for (int i = 0; i < pick.length; i++) {
      all = Around.all(all, each.get(i).get(pick[i]));
    }
    return all;
  }
}
