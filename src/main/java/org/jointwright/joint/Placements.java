package org.jointwright.joint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Point;

/**
 * The pours of a slab. Fresh concrete goes on over a joint that is tooled or sawn later and stops
 * at one that is formed: a construction joint, filler, an edge.
 */
public final class Placements {
  /** A side between two panels, by their numbers, and the joint it runs along. */
  private record Between(int one, int other, String joint) {}

  private final SlabLayout layout;
  private final List<Between> sides = new ArrayList<>();
  private final Set<String> formed;
  private final List<List<Point>> hulls = new ArrayList<>();

  private Placements(SlabLayout layout) {
    this.layout = layout;
    this.formed =
        layout.joints().stream()
            .filter(j -> j.kind() != JointKind.CONTRACTION)
            .map(Joint::id)
            .collect(Collectors.toSet());
    Map<Set<Point>, Integer> open = new HashMap<>();
    for (int i = 0; i < layout.panels().size(); i++) {
      Panel panel = layout.panels().get(i);
      hulls.add(Hull.of(panel.ring()).points());
      List<Side> all = new ArrayList<>(panel.outer());
      panel.holes().forEach(all::addAll);
      for (Side side : all) {
        if (side.source() instanceof Source.OnJoint on) {
          meet(open, i, side, on.joint());
        }
      }
    }
  }

  /** Pairs the two panels of a side: both have its ends, each the other way round. */
  private void meet(Map<Set<Point>, Integer> open, int panel, Side side, String joint) {
    if (side.edge().start().equals(side.edge().end())) {
      return;
    }
    Set<Point> key = Set.of(side.edge().start(), side.edge().end(), side.edge().at(0.5));
    Integer other = open.putIfAbsent(key, panel);
    if (other != null) {
      sides.add(new Between(other, panel, joint));
    }
  }

  /** The pours of a slab as its joints are, from below upwards by their first panels. */
  public static List<Placement> of(SlabLayout layout) {
    return of(layout, Set.of());
  }

  /** The pours if besides those that are formed some joints were, by their ids. */
  public static List<Placement> of(SlabLayout layout, Set<String> alsoFormed) {
    return new Placements(layout).split(alsoFormed);
  }

  /** The pours of one slab for any joints, what does not depend on them worked out once. */
  public static Placements in(SlabLayout layout) {
    return new Placements(layout);
  }

  /** The pours if besides those that are formed some joints were, by their ids. */
  public List<Placement> split(Set<String> alsoFormed) {
    Set<String> stops = new HashSet<>(formed);
    stops.addAll(alsoFormed);
    return between(stops);
  }

  /** What would be one pour if a joint that is formed were not; empty where it parts no panels. */
  public Optional<Placement> without(String joint) {
    Set<String> stops = new HashSet<>(formed);
    stops.remove(joint);
    return between(stops).stream().filter(p -> within(p).contains(joint)).findFirst();
  }

  private List<Placement> between(Set<String> stops) {
    int[] group = new int[layout.panels().size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (Between b : sides) {
      if (!stops.contains(b.joint())) {
        int one = root(group, b.one());
        int other = root(group, b.other());
        group[Math.max(one, other)] = Math.min(one, other);
      }
    }
    Map<Integer, List<Integer>> members = new LinkedHashMap<>();
    for (int i = 0; i < group.length; i++) {
      members.computeIfAbsent(root(group, i), k -> new ArrayList<>()).add(i);
    }
    return members.values().stream().map(this::placement).toList();
  }

  private static int root(int[] group, int i) {
    int at = i;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  private Placement placement(List<Integer> members) {
    List<Point> points = new ArrayList<>();
    members.forEach(i -> points.addAll(hulls.get(i)));
    Length thickness = layout.slab().thickness();
    List<Panel> panels = members.stream().map(layout.panels()::get).toList();
    return Placement.of(panels, Hull.of(points).width(), thickness);
  }

  /** The joints that run between two panels of a pour, by id. */
  public Set<String> within(Placement placement) {
    Set<String> found = new TreeSet<>();
    for (Between b : sides) {
      if (placement.panels().contains(layout.panels().get(b.one()))
          && placement.panels().contains(layout.panels().get(b.other()))) {
        found.add(b.joint());
      }
    }
    return found;
  }
}
