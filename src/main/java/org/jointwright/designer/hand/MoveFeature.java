package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.plan.Feature;
import org.jointwright.plan.edit.FeatureEdit;
import org.jointwright.shape.Edge;

/**
 * Drags something marked on a side along it: an end where the hand took hold of one, else the whole
 * of it. To whole inches, or centimetres, unless the hand is free.
 *
 * @param pick which one
 * @param grip where the hand pressed
 * @param was the mark then
 * @param part what of it is held
 */
record MoveFeature(Pick.AtFeature pick, Pointer grip, Feature was, Part part) implements Gesture {
  /** How near to an end the hand takes hold of that end; pixels. */
  private static final double END = 12;

  /** What of it the hand holds. */
  enum Part {
    /** The end nearer the side's first corner. */
    FROM,
    /** The other end. */
    TO,
    /** All of it. */
    WHOLE
  }

  static MoveFeature of(Desk desk, Pick.AtFeature pick, Pointer pointer) {
    Edge edge = Picks.edge(desk.plan(), pick.edge()).orElseThrow();
    Feature feature = Picks.feature(desk.plan(), pick).orElseThrow();
    double at = along(edge, pointer);
    double reach = Math.min(desk.viewport().inches(END), (feature.to() - feature.from()) / 3);
    Part part =
        Math.abs(at - feature.from()) <= reach
            ? Part.FROM
            : Math.abs(at - feature.to()) <= reach ? Part.TO : Part.WHOLE;
    return new MoveFeature(pick, pointer, feature, part);
  }

  private static double along(Edge edge, Pointer pointer) {
    return edge.nearest(pointer.plan()) * edge.length();
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pick);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    if (!isMoving && pointer.isClickAt(grip)) {
      return desk;
    }
    // Undoing while the hand is down may take the mark away, or its side.
    Optional<Edge> edge =
        Picks.feature(desk.plan(), pick).flatMap(f -> Picks.edge(desk.plan(), pick.edge()));
    if (edge.isEmpty()) {
      return desk;
    }
    double by = along(edge.get(), pointer) - along(edge.get(), grip);
    double step = pointer.step(desk.plan());
    Feature to = moved(by, step, edge.get().length());
    FeatureEdit.Change edit = new FeatureEdit.Change(pick.edge(), pick.feature(), to);
    Desk moved = isMoving ? desk.goingOn(edit) : desk.edited(edit);
    return moved.picking(pick).withHand(InHand.holding(new Hold.HeldFeature(pick)));
  }

  private Feature moved(double by, double step, double length) {
    double least = Math.max(Feature.SHORTEST, step);
    double from = was.from();
    double to = was.to();
    switch (part) {
      case FROM -> from = Math.clamp(stepped(from + by, step), 0, to - least);
      case TO -> to = Math.clamp(stepped(to + by, step), from + least, length);
      case WHOLE -> {
        double wide = to - from;
        from = Math.clamp(stepped(from + by, step), 0, Math.max(0, length - wide));
        to = Math.min(length, from + wide);
      }
    }
    return new Feature(was.kind(), from, to, was.kept());
  }

  private static double stepped(double inches, double step) {
    return Math.round(inches / step) * step;
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
