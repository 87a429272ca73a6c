package org.jointwright.wild;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * Things that hold a wild slab, each with filler as it should be, or too short, beside it or
 * forgotten; and joints that were right, spoilt.
 */
final class WildHolds {
  private static final int MOST_EDGES = 24;
  private static final int MOST_OBJECTS = 3;

  /** Shorter joints are none to the rules, inches. */
  private static final double SHORTEST = 0.6;

  private final SplittableRandom random;
  private final List<Joint> joints = new ArrayList<>();
  private final List<BoxOut> boxOuts = new ArrayList<>();
  private final List<FixedObject> objects = new ArrayList<>();

  private WildHolds(SplittableRandom random) {
    this.random = random;
  }

  /** The plan of one slab with what holds it, some of it wrong. */
  static Plan in(Plan plan, SplittableRandom random) {
    return new WildHolds(random).held(plan);
  }

  private Plan held(Plan plan) {
    Slab slab = plan.slabs().getFirst();
    slab.joints().forEach(this::spoilt);
    Map<Integer, EdgeSetting> settings = new HashMap<>();
    List<Edge> edges = slab.outline().ring().edges();
    for (int i = 0; i < Math.min(MOST_EDGES, edges.size()); i++) {
      if (random.nextInt(3) == 0) {
        Against[] all = Against.values();
        EdgeSetting setting = EdgeSetting.against(all[random.nextInt(all.length)]);
        settings.put(i, setting.withFloats(random.nextInt(6) == 0));
        fillerAlong(edges.get(i));
      }
    }
    Box box = slab.outline().ring().box();
    for (int tries = 0, wanted = random.nextInt(MOST_OBJECTS); tries < 12; tries++) {
      Point at =
          new Point(
              box.minX() + box.width() * random.nextDouble(),
              box.minY() + box.height() * random.nextDouble());
      boolean apart = objects.stream().allMatch(f -> f.shape().ring().distance(at) > 160);
      if (objects.size() < wanted && apart && slab.region().contains(at)) {
        object(slab.id(), at);
      }
    }
    Slab held = slab.withEdges(settings).withLaid(joints, boxOuts);
    return plan.withSlabs(List.of(held)).withFixed(objects);
  }

  private void spoilt(Joint j) {
    Point start = j.path().start();
    Point end = j.path().end();
    Point along = end.minus(start).times(1 / end.distance(start));
    double by = random.nextDouble(0.2, 3);
    switch (random.nextInt(10)) {
      case 0 -> joint(j.kind(), Path.straight(start, end.minus(along.times(by))));
      case 1 -> joint(j.kind(), Path.straight(start.minus(along.times(by)), end));
      case 2 -> {
        joint(j.kind(), j.path());
        Point aside = along.left().times(random.nextDouble(0.1, 1.2));
        joint(j.kind(), Path.straight(start.plus(aside), end.plus(aside)));
      }
      case 3 -> {
        Point middle = start.plus(end).times(0.5).plus(along.left().times(random.nextDouble(4)));
        joint(j.kind(), Path.through(List.of(start, middle, end)));
      }
      default -> joint(j.kind(), j.path());
    }
  }

  private void fillerAlong(Edge edge) {
    switch (random.nextInt(8)) {
      case 0 -> {
        // Forgotten.
      }
      case 1 -> filler(Path.of(edge.part(0, random.nextDouble(0.2, 1))));
      case 2 -> {
        Point aside = edge.direction(0.5).left().times(random.nextDouble(0.1, 1.5));
        filler(Path.straight(edge.start().plus(aside), edge.end().plus(aside)));
      }
      case 3 -> joint(JointKind.CONTRACTION, Path.of(edge));
      default -> filler(Path.of(edge));
    }
  }

  private void object(String slab, Point at) {
    double size = random.nextDouble(2, 12);
    String id = "F" + (objects.size() + 1);
    FixedShape shape =
        random.nextBoolean()
            ? new FixedShape.Round(at, Length.inches(size), Kept.NOTHING)
            : new FixedShape.Outlined(square(at, size / 2, 0), Kept.NOTHING);
    objects.add(new FixedObject(id, slab, FixedKind.POST, shape, Kept.NOTHING));
    if (random.nextInt(6) == 0) {
      return;
    }
    double clear = random.nextInt(8) == 0 ? random.nextDouble(20, 50) : random.nextDouble(1, 14);
    Point off =
        random.nextInt(4) == 0
            ? new Point(random.nextDouble(-4, 4), random.nextDouble(-4, 4))
            : new Point(0, 0);
    double half = size / 2 + clear;
    Outline outline =
        switch (random.nextInt(3)) {
          case 0 -> circle(at.plus(off), half);
          case 1 -> square(at.plus(off), half, Math.PI / 4);
          default -> square(at.plus(off), half, 0);
        };
    boxOuts.add(new BoxOut(id, outline, Kept.NOTHING));
    List<Edge> edges = outline.ring().edges();
    if (random.nextInt(5) != 0) {
      filler(new Path(edges));
    } else if (random.nextBoolean()) {
      filler(new Path(edges.subList(0, edges.size() - 1)));
    }
  }

  private static Outline square(Point at, double half, double turn) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(at.plus(new Point(half, half).turned(turn + i * Math.PI / 2)));
    }
    return Outline.of(corners);
  }

  private static Outline circle(Point at, double radius) {
    Point right = at.plus(new Point(radius, 0));
    Point leftmost = at.minus(new Point(radius, 0));
    return new Outline(
        List.of(
            Vertex.arc(right, at.plus(new Point(0, radius))),
            Vertex.arc(leftmost, at.minus(new Point(0, radius)))));
  }

  private void filler(Path path) {
    joint(JointKind.ISOLATION, path);
  }

  private void joint(JointKind kind, Path path) {
    if (path.length() < SHORTEST) {
      return;
    }
    Purpose purpose = kind == JointKind.ISOLATION ? Purpose.ISOLATION : Purpose.SPACING;
    joints.add(Joint.of("J" + (joints.size() + 1), kind, path, purpose));
  }
}
