package org.jointwright.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.judge.Checks;
import org.jointwright.fix.Fix;
import org.jointwright.fix.Fixes;
import org.jointwright.fix.name.JointName;
import org.jointwright.fix.name.ObjectsAt;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A line of joints beside a fixed object run through it, and the others laid anew: what a finisher
 * does with a post a few feet off a line, where several rules are in each other’s way. Each try
 * lays the slab anew, so only few are made.
 */
final class ThroughObject {
  /** Larger slabs take too long to be laid while somebody waits, panels. */
  private static final int MOST_PANELS = 40;

  /** So many tries for a layout, whatever is asked about it. */
  private static final int MOST_TRIES = 4;

  /** So many lines beside one object. */
  private static final int MOST_LINES = 2;

  /** Farther off than this a line has nothing to do with an object, inches. */
  private static final double BESIDE = 48;

  /** Nearer than this a line runs through it, inches: the rules’ tolerance on lengths. */
  private static final double THROUGH = 0.5;

  private static final Comparator<Tried> BEST =
      Comparator.<Tried>comparingInt(t -> t.now().of(Severity.MUST).size())
          .thenComparingInt(t -> weighty(t.now()))
          .thenComparingDouble(Tried::cost);

  /** What it may cost more, as the eye may: 5 %. */
  private static final double DEARER = 1.05;

  private final Plan asked;
  private final Layout layout;
  private final Judgement judgement;
  private final Function<Layout, Edit> lay;
  private final Map<String, List<Tried>> known = new HashMap<>();
  private int tries;

  /**
   * A line that was run through an object, where there is less to find then.
   *
   * @param fix what does it
   * @param laid the layout after it
   * @param now what the rules find in that
   * @param cost what it costs, feet
   */
  private record Tried(Fix fix, Layout laid, Judgement now, double cost) {}

  /**
   * For a layout.
   *
   * @param lay the edit that puts a layout in place of the one there is
   */
  ThroughObject(Plan asked, Layout layout, Judgement judgement, Function<Layout, Edit> lay) {
    this.asked = asked;
    this.layout = layout;
    this.judgement = judgement;
    this.lay = lay;
  }

  /**
   * What helps against a finding beside an object: of the lines that clear it, the one that leaves
   * the least to find, then the one that costs least. Empty where no line does, or once it is told
   * to stop.
   */
  Optional<Fix> of(Finding finding, BooleanSupplier goOn) {
    return layout
        .slab(finding.slab())
        .filter(s -> s.panels().size() <= MOST_PANELS)
        .flatMap(
            s ->
                ObjectsAt.of(s, finding).stream()
                    .flatMap(id -> layout.plan().fixedObject(id).stream())
                    .findFirst()
                    .flatMap(
                        f ->
                            known(s, f, goOn).stream()
                                .filter(t -> Fixes.isGone(finding, layout, t.laid(), t.now()))
                                .min(BEST)
                                .map(Tried::fix)));
  }

  private List<Tried> known(SlabLayout slab, FixedObject object, BooleanSupplier goOn) {
    if (known.containsKey(object.id())) {
      return known.getOrDefault(object.id(), List.of());
    }
    int before = tries;
    List<Tried> found = through(slab, object, goOn);
    if (goOn.getAsBoolean()) {
      known.put(object.id(), found);
    } else {
      // What was not tried to its end is as good as not tried.
      tries = before;
      return List.of();
    }
    return found;
  }

  private List<Tried> through(SlabLayout slab, FixedObject object, BooleanSupplier goOn) {
    Point at = object.shape().ring().box().centre();
    List<Joint> lines =
        slab.joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION && !j.locked())
            .filter(j -> j.path().edges().size() == 1)
            .filter(j -> j.path().edges().getFirst() instanceof Segment)
            .filter(j -> off(j, at).norm() > THROUGH && off(j, at).norm() <= BESIDE)
            .sorted(Comparator.comparingDouble(j -> -j.path().length()))
            .limit(MOST_LINES)
            .toList();
    List<Tried> found = new ArrayList<>();
    for (Joint line : lines) {
      if (tries++ < MOST_TRIES) {
        run(slab, line, off(line, at), object.id(), goOn).ifPresent(found::add);
      }
    }
    return List.copyOf(found);
  }

  /** How far a point is off the line of a joint, square to it. */
  private static Point off(Joint joint, Point at) {
    Point way = joint.path().end().minus(joint.path().start()).unit();
    Point from = at.minus(joint.path().start());
    return from.minus(way.times(from.dot(way)));
  }

  private Optional<Tried> run(
      SlabLayout slab, Joint line, Point by, String object, BooleanSupplier goOn) {
    String id = slab.slab().id();
    Map<String, Path> along = new HashMap<>();
    for (Joint j : slab.joints()) {
      boolean isOfLine =
          j.kind() == JointKind.CONTRACTION
              && !j.locked()
              && off(line, j.path().start()).norm() <= THROUGH
              && off(line, j.path().end()).norm() <= THROUGH;
      if (isOfLine) {
        along.put(j.id(), moved(j, by));
      }
    }
    JointEdit.Move move = new JointEdit.Move(id, line.id(), moved(line, by), along);
    Plan moved = move.applyTo(layout.plan());
    Plan held = moved.withSlab(id, s -> s.withLaid(s.lockedJoints(), s.boxOuts()));
    Set<String> others = new HashSet<>();
    held.slabs().stream().map(Slab::id).filter(s -> !s.equals(id)).forEach(others::add);
    Optional<Layout> anew = LayoutEngine.lay(held, others, goOn);
    if (anew.isEmpty()) {
      return Optional.empty();
    }
    Layout laid = anew.get();
    Judgement now = Checks.judge(held, laid);
    double cost = Figures.of(held, laid).cost();
    boolean isBetter =
        now.isComplete()
            && now.of(Severity.MUST).size() <= judgement.of(Severity.MUST).size()
            && weighty(now) < weighty(judgement)
            && cost <= DEARER * Figures.of(asked, layout).cost();
    Fix fix =
        Fix.of(
            "fix.throughObject",
            "fix.did.throughObject",
            List.of(new JointName(id, line.id()), object),
            lay.apply(laid));
    return isBetter ? Optional.of(new Tried(fix, laid, now, cost)) : Optional.empty();
  }

  private static Path moved(Joint joint, Point by) {
    return Path.straight(joint.path().start().plus(by), joint.path().end().plus(by));
  }

  private static int weighty(Judgement judgement) {
    return judgement.of(Severity.MUST).size() + judgement.of(Severity.SHOULD).size();
  }
}
