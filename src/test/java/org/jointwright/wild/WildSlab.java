package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.jointwright.measure.Length;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.SpacingRule;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/**
 * A wild slab by its kind and seed.
 *
 * @param kind what makes it wild
 * @param seed the seed
 */
public record WildSlab(WildKind kind, long seed) {
  /** Ten miles, inches: a plan drawn in a county's coordinates. */
  private static final double FAR = 633_600;

  /** The slab of that number in a run: the kinds take turns. */
  public static WildSlab numbered(long number) {
    WildKind[] kinds = WildKind.values();
    return new WildSlab(kinds[(int) (number % kinds.length)], number);
  }

  /** The slab of a name like {@code LENS-31}. */
  static WildSlab named(String name) {
    int dash = name.lastIndexOf('-');
    return new WildSlab(
        WildKind.valueOf(name.substring(0, dash)), Long.parseLong(name.substring(dash + 1)));
  }

  /** What it is called in lists and reports. */
  public String name() {
    return kind + "-" + seed;
  }

  /** The plan, no joints in it. */
  Plan bare() {
    SplittableRandom random = new SplittableRandom(seed * 61 + kind.ordinal());
    List<Outline> rings = new WildOutlines(random).rings(kind);
    double turn = random.nextInt(3) == 0 ? random.nextDouble() * 2 * Math.PI : 0;
    Point by =
        random.nextInt(4) == 0
            ? new Point(FAR * random.nextDouble(-1, 1), FAR * random.nextDouble(-1, 1))
            : new Point(0, 0);
    List<Outline> placed = rings.stream().map(o -> placed(o, turn, by)).toList();
    Slab slab =
        Slab.of("slab", placed.getFirst())
            .withThickness(Length.inches(random.nextInt(4, 7)))
            .withOpenings(
                placed.stream().skip(1).map(o -> new Opening(o, Map.of(), Kept.NOTHING)).toList())
            .withJointing(jointing(random));
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  /** The plan with joints drawn at random across it, kept for a judge's second opinion. */
  public Plan jointed() {
    Plan plan = bare();
    Slab slab = plan.slabs().getFirst();
    return plan.withSlabs(
        List.of(slab.withLaid(WildJoints.across(slab, new SplittableRandom(~seed)), List.of())));
  }

  /** The plan with joints, things that hold the slab, and filler, some of it wrong. */
  Plan held() {
    return WildHolds.in(jointed(), new SplittableRandom(~seed * 31));
  }

  private Jointing jointing(SplittableRandom random) {
    Optional<Length> spacing =
        kind != WildKind.HUGE && random.nextInt(4) == 0
            ? Optional.of(Length.inches(random.nextInt(36, 200)))
            : Optional.empty();
    OptionalDouble aspect =
        random.nextInt(4) == 0
            ? OptionalDouble.of(random.nextDouble(1, 2.5))
            : OptionalDouble.empty();
    Optional<SpacingRule> rule = Optional.empty();
    return new Jointing(rule, spacing, aspect, Optional.empty(), Preference.SHORTEST, Kept.NOTHING);
  }

  private static Outline placed(Outline outline, double turn, Point by) {
    List<Vertex> vertices = new ArrayList<>();
    for (Vertex v : outline.vertices()) {
      vertices.add(
          v.moved(v.at().turned(turn).plus(by), v.via().map(p -> p.turned(turn).plus(by))));
    }
    return new Outline(vertices);
  }
}
