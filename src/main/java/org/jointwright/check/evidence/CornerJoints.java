package org.jointwright.check.evidence;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.face.Face;
import org.jointwright.check.face.Turn;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.Traced;

/**
 * Which joints are corner joints, and which panels are the tips they cut off.
 *
 * @param joints the ids of the corner joints
 * @param tips the ids of the tips
 */
public record CornerJoints(Set<String> joints, Set<String> tips) {
  private static final double NEAR =
      Corners.CORNER_JOINT_NEAR.value().inches() - Tolerance.LENGTH_INCHES - 1e-6;
  private static final double FAR =
      Corners.CORNER_JOINT_FAR.value().inches() + Tolerance.LENGTH_INCHES + 1e-6;
  private static final double SHARP = Angles.SHARP.value() + Tolerance.ANGLE.value();
  private static final double STRAIGHT = 179;

  /** A tip is no bigger than its triangle by this share and this much, square inches. */
  private static final double BIGGER = 1.2;

  private static final double BIGGER_BY = 3;

  /** Copies the sets. */
  public CornerJoints {
    joints = Set.copyOf(joints);
    tips = Set.copyOf(tips);
  }

  /** The corner joints of a slab; {@code marks} are the corner joints that its user asked for. */
  static CornerJoints of(Slab slab, List<Joint> marks, List<Face> faces) {
    Set<String> joints = new HashSet<>();
    Set<String> tips = new HashSet<>();
    for (Joint j : slab.joints()) {
      if (j.purpose() == Purpose.CORNER || marks.stream().anyMatch(m -> sameEnds(m, j))) {
        cut(slab, marks, j)
            .ifPresent(
                corner -> {
                  joints.add(j.id());
                  faces.stream()
                      .filter(f -> isTip(f, j, corner.at()))
                      .forEach(f -> tips.add(f.id()));
                });
      }
    }
    return new CornerJoints(joints, tips);
  }

  private record Cut(Point at, double interior) {}

  private static Optional<Cut> cut(Slab slab, List<Joint> marks, Joint joint) {
    Path path = Traced.path(joint.path());
    boolean straight = path.edges().size() == 1 && path.edges().getFirst() instanceof Segment;
    if (!straight || joint.kind() != JointKind.CONTRACTION) {
      return Optional.empty();
    }
    return cornerBetween(slab, joint.path(), NEAR, FAR)
        .filter(
            c ->
                c.interior() < SHARP
                    || marks.stream()
                        .anyMatch(
                            m ->
                                cornerBetween(slab, m.path(), 0, Double.MAX_VALUE)
                                    .equals(Optional.of(c))));
  }

  /** The outside corner of the outline that a path cuts off at those distances. */
  private static Optional<Cut> cornerBetween(Slab slab, Path path, double near, double far) {
    Ring ring = slab.outline().ring();
    int n = ring.edges().size();
    for (int i = 0; i < n; i++) {
      Edge in = ring.edges().get((i + n - 1) % n);
      Edge out = ring.edges().get(i);
      double interior = 180 - Turn.degrees(in, out);
      if (interior < STRAIGHT
          && (spans(in, out, path.start(), path.end(), near, far)
              || spans(in, out, path.end(), path.start(), near, far))) {
        return Optional.of(new Cut(out.start(), interior));
      }
    }
    return Optional.empty();
  }

  private static boolean spans(Edge in, Edge out, Point a, Point b, double near, double far) {
    double da = a.distance(out.start());
    double db = b.distance(out.start());
    return in.distance(a) <= Nearness.ON
        && out.distance(b) <= Nearness.ON
        && Math.min(da, db) > Math.max(near, Tolerance.LENGTH_INCHES)
        && Math.max(da, db) <= far;
  }

  private static boolean sameEnds(Joint a, Joint b) {
    return joins(a.path(), b.path().start(), b.path().end())
        || joins(a.path(), b.path().end(), b.path().start());
  }

  private static boolean joins(Path path, Point from, Point to) {
    return near(path.start(), from) && near(path.end(), to);
  }

  private static boolean near(Point a, Point b) {
    return a.distance(b) <= Nearness.ON;
  }

  private static boolean isTip(Face face, Joint joint, Point corner) {
    Point u = joint.path().start().minus(corner);
    Point v = joint.path().end().minus(corner);
    double triangle = Math.abs(u.cross(v)) / 2;
    return face.steps().anyMatch(s -> s.source().equals(new Source.OnJoint(joint.id())))
        && face.measures().area() <= BIGGER * triangle + BIGGER_BY
        && face.panel().ring().distance(corner) <= Tolerance.LENGTH_INCHES;
  }
}
