package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Makes two slabs of one, along a straight line. */
final class Parting {
  private Parting() {}

  static Plan of(Plan plan, String id, Point from, Point to) {
    Slab slab = Rings.slab(plan, id);
    List<Piece> round = Piece.of(slab.outline(), slab.edges());
    Place a = place(round, from);
    Place b = place(round, to);
    if (a.at.distance(b.at) <= Sizes.CLEAR) {
      throw new IllegalArgumentException("no line runs from a place to itself");
    }
    Segment line = new Segment(a.at, b.at);
    for (Opening o : slab.openings()) {
      for (Edge e : o.outline().ring().edges()) {
        if (!Crossing.of(line, e).isEmpty()) {
          throw new IllegalArgumentException("the line runs through an opening");
        }
      }
    }
    List<Piece> one = part(round, a, b);
    List<Piece> two = part(round, b, a);
    boolean isFirstLarger =
        Piece.outline(one).ring().signedArea() >= Piece.outline(two).ring().signedArea();
    Slab larger = slab(slab, isFirstLarger ? one : two);
    Slab smaller = slab(slab, isFirstLarger ? two : one).withId(FreeName.of(plan, id));
    Ring its = smaller.outline().ring();
    List<Slab> slabs = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      slabs.add(s.id().equals(id) ? larger : s);
      if (s.id().equals(id)) {
        slabs.add(smaller);
      }
    }
    List<FixedObject> fixed =
        plan.fixed().stream()
            .map(
                f ->
                    f.slab().equals(id) && its.contains(f.shape().ring().box().centre())
                        ? f.inSlab(smaller.id())
                        : f)
            .toList();
    return plan.withSlabs(slabs).withFixed(fixed);
  }

  /** A place on the round: the piece, the share of its length, and the point. */
  private record Place(int piece, double share, Point at) {}

  private static Place place(List<Piece> round, Point p) {
    int nearest = 0;
    for (int i = 1; i < round.size(); i++) {
      if (round.get(i).edge().distance(p) < round.get(nearest).edge().distance(p)) {
        nearest = i;
      }
    }
    Edge e = round.get(nearest).edge();
    if (e.distance(p) > Sizes.CLEAR) {
      throw new IllegalArgumentException("the line ends beside the outline");
    }
    if (e.start().distance(p) <= Sizes.CLEAR) {
      return new Place(nearest, 0, e.start());
    }
    if (e.end().distance(p) <= Sizes.CLEAR) {
      return new Place((nearest + 1) % round.size(), 0, e.end());
    }
    double share = e.nearest(p);
    return new Place(nearest, share, e.at(share));
  }

  /** The pieces from one place on to another, and straight back. */
  private static List<Piece> part(List<Piece> round, Place from, Place to) {
    List<Piece> part = new ArrayList<>();
    int n = round.size();
    boolean isOnOne = from.piece == to.piece && from.share < to.share;
    if (isOnOne) {
      part.add(round.get(from.piece).part(from.share, to.share));
    } else {
      part.add(round.get(from.piece).part(from.share, 1));
      for (int i = (from.piece + 1) % n; i != to.piece; i = (i + 1) % n) {
        part.add(round.get(i));
      }
      if (to.share > 0) {
        part.add(round.get(to.piece).part(0, to.share));
      }
    }
    part.add(Piece.straight(part.getLast().edge().end(), part.getFirst().edge().start()));
    return part;
  }

  private static Slab slab(Slab whole, List<Piece> round) {
    Slab bare = whole.withOutline(Piece.outline(round)).withEdges(Piece.settings(round));
    Ring ring = bare.outline().ring();
    List<Opening> openings =
        whole.openings().stream()
            .filter(o -> ring.contains(o.outline().vertices().getFirst().at()))
            .toList();
    List<KeepClear> zones =
        whole.keepClear().stream().filter(z -> meets(ring, z.outline().ring())).toList();
    List<Joint> joints = whole.joints().stream().filter(j -> j.locked() && isIn(ring, j)).toList();
    List<BoxOut> boxOuts =
        whole.boxOuts().stream()
            .filter(b -> ring.contains(b.outline().ring().box().centre()))
            .toList();
    return bare.withOpenings(openings)
        .withKeepClear(zones)
        .withJointing(jointing(whole.jointing(), round))
        .withLaid(joints, boxOuts);
  }

  private static boolean meets(Ring slab, Ring zone) {
    return slab.contains(zone.box().centre())
        || zone.vertices().stream().anyMatch(slab::contains)
        || slab.vertices().stream().anyMatch(zone::contains);
  }

  private static boolean isIn(Ring slab, Joint joint) {
    return isAt(slab, joint.path().start())
        && isAt(slab, joint.path().end())
        && joint.path().edges().stream().allMatch(e -> isAt(slab, e.at(0.5)));
  }

  private static boolean isAt(Ring slab, Point p) {
    return slab.contains(p) || slab.distance(p) <= Sizes.CLEAR;
  }

  /** In line with the same side, where the part still has it. */
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
}
