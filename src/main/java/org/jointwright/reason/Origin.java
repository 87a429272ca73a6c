package org.jointwright.reason;

import java.util.Optional;
import org.jointwright.joint.Source;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Against;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Pour;
import org.jointwright.shape.Point;

/**
 * Something that a joint takes its place from. Lengths are inches; a {@link Source} counts the
 * edges of outlines, openings and box-outs counter-clockwise, from 0.
 */
public sealed interface Origin {
  /** The part of the joint that takes its place from it. */
  Where where();

  /**
   * It starts at a corner where the concrete turns inwards.
   *
   * @param of the edge that leaves the corner: of the outline or of an opening
   * @param at the corner
   * @param letter the corner's letter, where it has one
   * @param degrees the angle inside the concrete, over 185
   */
  record InsideCorner(Where where, Source of, Point at, Optional<String> letter, double degrees)
      implements Origin {}

  /** It starts at a corner of the box-out round a fixed object. */
  record BoxOutCorner(Where where, String fixed, Point at) implements Origin {}

  /** It starts on a side of the box-out round a fixed object, or on a round one. */
  record BoxOutSide(Where where, String fixed) implements Origin {}

  /**
   * It starts where an arc begins or ends, as at the end of a flare.
   *
   * @param of the arc
   */
  record EndOfArc(Where where, Source of, Point at, Optional<String> letter) implements Origin {}

  /**
   * It starts at a corner where the concrete turns outwards, and so divides it.
   *
   * @param degrees the whole angle of the corner
   */
  record OutsideCorner(Where where, Source of, Point at, Optional<String> letter, double degrees)
      implements Origin {}

  /**
   * It meets an end of something that people see along an edge.
   *
   * @param of the edge
   * @param kind what is seen there
   * @param number which of the edge's features it is, from 0
   * @param first whether it meets the end that is nearer the edge's first corner
   */
  record FeatureEnd(Where where, Source of, FeatureKind kind, int number, boolean first)
      implements Origin {}

  /** It meets a joint of concrete that is there already, by its number in the plan, from 0. */
  record GivenJointEnd(Where where, int number) implements Origin {}

  /** It meets a joint of another slab, across an edge that has no filler. */
  record NeighbourJoint(Where where, String slab, String joint) implements Origin {}

  /**
   * Another joint goes on from it in the same line, or nearly.
   *
   * @param bend by how much it turns from the line there, degrees, 0 or more
   */
  record GoesOn(Where where, String joint, double bend) implements Origin {}

  /** It ends on the side of another joint. */
  record EndsOn(Where where, String joint) implements Origin {}

  /**
   * It stands at a whole inch, or whole 10 mm in a metric plan, from a corner.
   *
   * @param corner the letter of the corner
   * @param tape the side's name by its corners
   * @param inches the mark, along the form
   */
  record WholeMark(Where where, String corner, String tape, double inches) implements Origin {}

  /**
   * It runs along the radius of an arc of the slab's edge, of an opening or of a box-out.
   *
   * @param of the arc
   * @param centre where the arc's middle is
   */
  record Radial(Where where, Source of, Point centre) implements Origin {}

  /** It is an arc about the same middle as an arc of an edge. */
  record Concentric(Where where, Source of, Point centre) implements Origin {}

  /**
   * It is one of the lines that divide the way between two others in equal parts, to an inch.
   *
   * @param from the line that is counted from
   * @param to the line that is counted to
   * @param part how many parts lie before it, from 1
   * @param of how many parts there are, 2 or more
   * @param share where exactly it stands, as a share of the whole way
   * @param whole the whole way; along the arc for joints that are radial to one
   */
  record Even(Where where, Source from, Source to, int part, int of, double share, double whole)
      implements Origin {}

  /** It is one of the lines that divide a full circle in equal parts, to an inch at the rim. */
  record EvenRound(Where where, Source rim, int of) implements Origin {}

  /**
   * It stands between two lines that run beside it, at unequal distances.
   *
   * @param from the line on its left, seen the way in which it runs to the right, or straight up
   * @param before the distance to it
   * @param to the line on the other side
   * @param after the distance to that
   */
  record Between(Where where, Source from, double before, Source to, double after)
      implements Origin {}

  /** It parts two panels that would else be one. */
  record Parts(Where where, double area) implements Origin {}

  /** The user holds it where it is. */
  record Locked(Where where) implements Origin {}

  /**
   * Filler along an edge.
   *
   * @param of the edge
   * @param against what the edge is against
   */
  record AlongEdge(Where where, Source of, Against against) implements Origin {}

  /** Filler round a fixed object. */
  record RoundObject(Where where, String fixed) implements Origin {}

  /** Two slabs of the plan meet there; one is placed first. */
  record SlabsMeet(Where where, String other) implements Origin {}

  /**
   * One pour ends there, for the plan limits how much is placed at once.
   *
   * @param volume what the pours on both sides would hold as one, where that is more than the limit
   * @param width how wide they would be as one, where that is more than the limit
   * @param limits the limits
   */
  record PourEnds(Where where, Optional<Volume> volume, Optional<Length> width, Pour limits)
      implements Origin {}

  /** It cuts off the tip of a sharp corner, or of one that its user marked. */
  record CornerTip(Where where, Point at, Optional<String> letter, double degrees)
      implements Origin {}
}
