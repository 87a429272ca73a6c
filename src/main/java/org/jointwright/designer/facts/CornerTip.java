package org.jointwright.designer.facts;

import java.util.List;
import java.util.Optional;
import org.jointwright.app.CornerTips;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Picks;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The joint across the tip of a corner of a slab: its distance from the corner, typed. */
record CornerTip(Plan plan, Ref corner, Words words) {
  /** An end this near to a side stands on it, inches: the rules' tolerance on lengths. */
  private static final double ON = 0.5;

  /** Nearer to the corner there is nothing to cut off, inches. */
  private static final double NEAREST = 3;

  Row row() {
    return new Row.Typed(
        "corner-tip",
        words.say("window.corner.tip"),
        legs().map(words::print).orElse(none()),
        t -> t.isBlank() || t.strip().equals(none()) ? d -> d : d -> cut(d, Figures.site(t, d)));
  }

  private String none() {
    return words.say("window.corner.noTip");
  }

  /** A button that cuts it off at the usual place; empty where that is done, or has no room. */
  Optional<Deed> offer() {
    Length usual = CornerTips.usual();
    return legs().isPresent() || usual.inches() >= shorter(plan)
        ? Optional.empty()
        : Optional.of(
            Deed.of("cut-tip", words.say("window.deed.cutTip", usual), d -> cut(d, usual)));
  }

  private Desk cut(Desk d, Length legs) {
    double most = shorter(d.plan());
    if (legs.inches() < NEAREST || legs.inches() >= most) {
      throw new BadFigure(
          "window.figure.tip", Length.inches(NEAREST), Length.inches(Math.floor(most - 0.01)));
    }
    return d.editedOnly(new JointEdit.AddCornerJoint(corner.slab(), corner.index(), legs.inches()));
  }

  private double shorter(Plan now) {
    List<Edge> sides = sides(now);
    return Math.min(sides.getFirst().length(), sides.getLast().length());
  }

  private List<Edge> sides(Plan now) {
    List<Edge> edges = Picks.outline(now, corner).orElseThrow().ring().edges();
    int n = edges.size();
    return List.of(edges.get((corner.index() + n - 1) % n), edges.get(corner.index()));
  }

  /** How far from the corner the joint across its tip stands, where there is one. */
  private Optional<Length> legs() {
    Edge before = sides(plan).getFirst();
    Edge after = sides(plan).getLast();
    return plan.slab(corner.slab()).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.purpose() == Purpose.CORNER && isAcross(j, before, after))
        .findFirst()
        .map(j -> onto(j, after))
        .map(p -> Length.inches(after.nearest(p) * after.length()));
  }

  private static boolean isAcross(Joint j, Edge before, Edge after) {
    Point a = j.path().start();
    Point b = j.path().end();
    return (before.distance(a) < ON && after.distance(b) < ON)
        || (after.distance(a) < ON && before.distance(b) < ON);
  }

  private static Point onto(Joint j, Edge side) {
    return side.distance(j.path().end()) < ON ? j.path().end() : j.path().start();
  }
}
