package org.jointwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jointwright.joint.PanelLines;
import org.jointwright.joint.Placement;
import org.jointwright.joint.Placements;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;

/**
 * Chooses where the pours of a slab stop: whole lines of its panel joints, made construction
 * joints, as few feet of them as keep every pour within its limits and the pours about even. Where
 * no lines do, those that come nearest. (Common practice, no source.)
 */
final class PourStops {
  /** How many sets of lines are followed at a time, where the slab is small. */
  private static final int WIDTH = 24;

  /** Lines times panels up to which so many are followed; fewer beyond. */
  private static final int SMALL = 3_000;

  /** What is won by less than this is not worth a line of forms. */
  private static final double WON = 1e-6;

  /** What uneven pours weigh against feet of forms: a cv of 1 as half of them more. */
  private static final double UNEVEN = 0.5;

  private final Placements placements;
  private final List<PanelLines.Whole> lines;
  private final Pour limits;
  private final double shortest;
  private final int width;
  private final BooleanSupplier goOn;

  private PourStops(SlabLayout layout, Pour limits, BooleanSupplier goOn) {
    this.limits = limits;
    this.goOn = goOn;
    placements = Placements.in(layout);
    lines = PanelLines.of(layout);
    shortest = lines.stream().mapToDouble(PanelLines.Whole::length).min().orElse(0);
    int size = Math.max(1, lines.size() * layout.panels().size());
    width = Math.clamp((long) WIDTH * SMALL / size, 1, WIDTH);
  }

  /**
   * Some of the lines made construction joints.
   *
   * @param chosen their numbers
   * @param feet how long they are, inches
   * @param needed how many lines more are needed at least
   * @param excess by how much pours are over, each weighted by its share of the slab
   * @param uneven the coefficient of variation of the pours' volumes
   */
  private record Stop(Set<Integer> chosen, double feet, int needed, double excess, double uneven) {}

  private Set<String> best() {
    Stop start = stop(Set.of());
    List<Stop> beam = List.of(start);
    Stop nearest = start;
    Stop done = null;
    Set<Set<Integer>> seen = new HashSet<>();
    while (!beam.isEmpty()) {
      List<Stop> next = new ArrayList<>();
      for (Stop s : beam) {
        if (s.excess() <= 0) {
          done = done == null || cost(s) < cost(done) - WON ? s : done;
        } else if (done == null || s.feet() < done.feet()) {
          next.addAll(children(s, seen));
        }
        nearest = isNearer(s, nearest) ? s : nearest;
      }
      next.sort(Comparator.comparingDouble(this::hope));
      beam = next.subList(0, Math.min(width, next.size()));
    }
    Set<String> joints = new TreeSet<>();
    for (int i : (done == null ? nearest : done).chosen()) {
      joints.addAll(lines.get(i).joints());
    }
    return joints;
  }

  /** With one line more, of those that run through a pour that is over. */
  private List<Stop> children(Stop s, Set<Set<Integer>> seen) {
    Set<String> through = new HashSet<>();
    for (Placement p : placements.split(joints(s.chosen()))) {
      if (!p.isWithin(limits)) {
        through.addAll(placements.within(p));
      }
    }
    List<Stop> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).joints().stream().noneMatch(through::contains)) {
        continue;
      }
      Set<Integer> chosen = new TreeSet<>(s.chosen());
      if (chosen.add(i) && seen.add(chosen)) {
        Stop child = stop(chosen);
        if (child.excess() < s.excess() - WON) {
          found.add(child);
        }
      }
    }
    return found;
  }

  private Set<String> joints(Set<Integer> chosen) {
    Set<String> joints = new HashSet<>();
    chosen.forEach(i -> joints.addAll(lines.get(i).joints()));
    return joints;
  }

  private Stop stop(Set<Integer> chosen) {
    if (!goOn.getAsBoolean()) {
      throw new CancellationException("the search for pours was told to stop");
    }
    List<Placement> pours = placements.split(joints(chosen));
    double area = pours.stream().mapToDouble(Placement::area).sum();
    double mean = area / pours.size();
    double squares = 0;
    double excess = 0;
    int needed = 0;
    for (Placement p : pours) {
      squares += p.area() * p.area();
      if (!p.isWithin(limits)) {
        double load = p.load(limits);
        excess += (load - 1) * p.area() / area;
        needed += (int) Math.ceil(load - WON) - 1;
      }
    }
    double uneven = Math.sqrt(Math.max(0, squares / pours.size() / mean / mean - 1));
    double feet = chosen.stream().mapToDouble(i -> lines.get(i).length()).sum();
    return new Stop(chosen, feet, needed, excess, uneven);
  }

  private static double cost(Stop s) {
    return s.feet() * (1 + UNEVEN * s.uneven());
  }

  /** What it will come to at least, the nearer to its end first where that is the same. */
  private double hope(Stop s) {
    return cost(s) + s.needed() * shortest + Math.min(0.5, s.excess());
  }

  private static boolean isNearer(Stop s, Stop than) {
    return s.excess() < than.excess() - WON
        || (s.excess() < than.excess() + WON && s.feet() < than.feet() - WON);
  }

  /**
   * The slab with the joints at which its pours stop made construction joints.
   *
   * @param goOn asked at each step; once it says no, a {@link CancellationException} ends the
   *     search
   */
  static Slab stopped(SlabLayout layout, Pour limits, BooleanSupplier goOn) {
    Set<String> stops = new PourStops(layout, limits, goOn).best();
    Slab slab = layout.slab();
    if (stops.isEmpty()) {
      return slab;
    }
    List<Joint> joints = new ArrayList<>();
    for (Joint j : slab.joints()) {
      joints.add(stops.contains(j.id()) ? formed(j) : j);
    }
    return slab.withLaid(CuttingOrder.inCuttingOrder(slab, joints), slab.boxOuts());
  }

  private static Joint formed(Joint j) {
    return Joint.of(j.id(), JointKind.CONSTRUCTION, j.path(), Purpose.POUR);
  }
}
