package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;

/** Finds why the joints of a slab are where they are, whoever laid them. */
public final class Reasons {
  private final SlabLayout slab;
  private final Ground ground;
  private final Judged judged;
  private final LeftOut leftOut;

  private Reasons(Plan asked, Layout layout, SlabLayout slab) {
    this.slab = slab;
    ground = new Ground(layout, slab);
    judged = new Judged(asked, layout, slab);
    leftOut = new LeftOut(asked, layout, slab, ground, judged);
  }

  /**
   * The reasons of every joint of a slab, in the order of its joints.
   *
   * @param asked the plan that was given, with what its user locked
   * @param layout what was laid for it
   * @param slab the id of the slab; no reasons where the layout has no such slab
   */
  public static List<Reason> of(Plan asked, Layout layout, String slab) {
    List<String> all =
        layout.slab(slab).stream().flatMap(s -> s.joints().stream()).map(Joint::id).toList();
    return of(asked, layout, slab, all);
  }

  /** The reasons of the joints of those ids, in the slab's order; only those are worked out. */
  public static List<Reason> of(Plan asked, Layout layout, String slab, List<String> joints) {
    Optional<SlabLayout> laid = layout.slab(slab);
    if (laid.isEmpty() || joints.isEmpty()) {
      return List.of();
    }
    Reasons reasons = new Reasons(asked, layout, laid.get());
    return laid.get().joints().stream()
        .filter(j -> joints.contains(j.id()))
        .map(reasons::of)
        .toList();
  }

  private Reason of(Joint joint) {
    List<String> line = line(joint);
    return new Reason(
        slab.slab().id(),
        joint.id(),
        origins(joint),
        leftOut.without(List.of(joint.id())),
        line.size() > 1 ? Optional.of(leftOut.without(line)) : Optional.empty());
  }

  private List<Origin> origins(Joint given) {
    List<Origin> found = new ArrayList<>(WholeOrigins.of(ground, judged, given));
    Optional<Joint> traced =
        ground.joints().stream().filter(j -> j.id().equals(given.id())).findFirst();
    boolean isTip = found.stream().anyMatch(o -> o instanceof Origin.CornerTip);
    if (traced.isEmpty() || isTip) {
      return found;
    }
    Joint joint = traced.get();
    boolean slabsMeet = found.stream().anyMatch(o -> o instanceof Origin.SlabsMeet);
    if (!slabsMeet) {
      List<Origin> ends = new ArrayList<>(EndOrigins.of(ground, joint, true));
      ends.addAll(EndOrigins.of(ground, joint, false));
      WholeOrigins.concentric(ground, joint).ifPresent(ends::add);
      if (ends.stream().noneMatch(Reasons::fixesPlace)) {
        Division.of(ground, joint).ifPresent(ends::add);
      }
      ends.sort(Comparator.comparingInt(Reasons::weight));
      found.addAll(ends);
      if (found.stream().allMatch(o -> o instanceof Origin.WholeMark)) {
        WholeOrigins.parts(slab, joint).ifPresent(found::add);
      }
    }
    return found;
  }

  /** Whether an origin leaves no choice: how a joint divides the rest is chance then. */
  private static boolean fixesPlace(Origin o) {
    return o instanceof Origin.InsideCorner
        || o instanceof Origin.BoxOutCorner
        || o instanceof Origin.FeatureEnd
        || o instanceof Origin.GivenJointEnd;
  }

  /** How much an origin tells, the most telling first. */
  private static int weight(Origin o) {
    return switch (o) {
      case Origin.AlongEdge e -> 0;
      case Origin.RoundObject e -> 0;
      case Origin.SlabsMeet e -> 0;
      case Origin.CornerTip e -> 0;
      case Origin.PourEnds e -> 0;
      case Origin.Locked e -> 0;
      case Origin.BoxOutCorner e -> 1;
      case Origin.InsideCorner e -> 2;
      case Origin.GivenJointEnd e -> 3;
      case Origin.NeighbourJoint e -> 3;
      case Origin.FeatureEnd e -> 3;
      case Origin.EndOfArc e -> 4;
      case Origin.OutsideCorner e -> 5;
      case Origin.Even e -> 6;
      case Origin.EvenRound e -> 6;
      case Origin.Radial e -> 7;
      case Origin.Concentric e -> 7;
      case Origin.BoxOutSide e -> 8;
      case Origin.GoesOn e -> 9;
      case Origin.Between e -> 10;
      case Origin.EndsOn e -> 11;
      case Origin.WholeMark e -> 12;
      case Origin.Parts e -> 13;
    };
  }

  /** The joints of the line that a joint is a part of, itself among them, in the slab's order. */
  private List<String> line(Joint joint) {
    Set<String> line = new LinkedHashSet<>(List.of(joint.id()));
    List<String> next = new ArrayList<>(line);
    while (!next.isEmpty()) {
      String id = next.removeLast();
      for (Joint j : ground.joints()) {
        if (j.id().equals(id) && j.kind() == joint.kind()) {
          for (boolean first : new boolean[] {true, false}) {
            EndOrigins.goingOn(ground, j, first).stream().filter(line::add).forEach(next::add);
          }
        }
      }
    }
    return slab.joints().stream()
        .filter(j -> line.contains(j.id()) && j.kind() == joint.kind())
        .map(Joint::id)
        .toList();
  }
}
