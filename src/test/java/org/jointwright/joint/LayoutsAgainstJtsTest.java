package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The faces of random slabs, compared with those that JTS finds in the same lines. */
class LayoutsAgainstJtsTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double CHORD_ERROR = 1e-3;

  @Test
  void randomStraightSlabsHaveThePanelsJtsFinds() {
    for (long seed = 1; seed <= 300; seed++) {
      Random random = new Random(seed);
      agree(seed, slab(random, star(random, false)), 2);
    }
  }

  @Test
  void randomSlabsWithArcsHaveThePanelsJtsFinds() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      agree(seed, slab(random, star(random, true)), 5);
    }
  }

  @Test
  void panelsAreTheSameFarFromTheOrigin() {
    for (long seed = 1; seed <= 50; seed++) {
      Random random = new Random(seed);
      Slab near = slab(random, star(random, true));
      // Ten miles off, as a plan drawn in a county's coordinates would be.
      Point far = new Point(633600, -633600);
      Slab moved = moved(near, far);
      assertThat(areas(Layouts.of(moved)))
          .as("seed %d", seed)
          .usingElementComparator((a, b) -> Math.abs(a - b) < 0.01 ? 0 : Double.compare(a, b))
          .containsExactlyElementsOf(areas(Layouts.of(near)));
    }
  }

  private static void agree(long seed, Slab slab, double tolerance) {
    List<Double> ours = areas(Layouts.of(slab));
    List<Double> theirs = polygonized(slab);
    // A face too thin for the tolerance may be seen by one and not by the other.
    ours.removeIf(a -> a < 2 * tolerance + 1);
    theirs.removeIf(a -> a < 2 * tolerance + 1);
    assertThat(ours)
        .as("seed %d: areas of the panels, square inches", seed)
        .usingElementComparator((a, b) -> Math.abs(a - b) < tolerance ? 0 : Double.compare(a, b))
        .containsExactlyElementsOf(theirs);
  }

  private static List<Double> areas(SlabLayout layout) {
    return new ArrayList<>(layout.panels().stream().map(Panel::area).sorted().toList());
  }

  @SuppressWarnings("unchecked")
  private static List<Double> polygonized(Slab slab) {
    Ring ring = slab.outline().ring();
    List<Point> rim = Chords.round(ring, CHORD_ERROR);
    List<Coordinate> closed = new ArrayList<>(rim.stream().map(LayoutsAgainstJtsTest::c).toList());
    closed.add(closed.getFirst());
    List<Geometry> lines = new ArrayList<>();
    lines.add(JTS.createLineString(closed.toArray(Coordinate[]::new)));
    for (Joint j : slab.joints()) {
      Point a = j.path().start();
      Point b = j.path().end();
      lines.add(JTS.createLineString(new Coordinate[] {c(a), c(b)}));
    }
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(OverlayNGRobust.union(JTS.buildGeometry(lines)));
    Polygon whole = JTS.createPolygon(closed.toArray(Coordinate[]::new));
    return new ArrayList<>(
        ((Collection<Polygon>) polygonizer.getPolygons())
            .stream()
                .filter(p -> whole.contains(p.getInteriorPoint()))
                .map(Polygon::getArea)
                .sorted()
                .toList());
  }

  private static Coordinate c(Point p) {
    return new Coordinate(p.x(), p.y());
  }

  /** An outline that sees its own middle, so that it never crosses itself. */
  private static Outline star(Random random, boolean arcs) {
    int n = 4 + random.nextInt(9);
    List<Vertex> vertices = new ArrayList<>();
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      at.add(new Point(150 + 150 * random.nextDouble(), 0).turned(angle));
    }
    for (int i = 0; i < n; i++) {
      Point next = at.get((i + 1) % n);
      if (arcs && random.nextBoolean()) {
        Point chord = next.minus(at.get(i));
        double bow = 0.08 * (random.nextDouble() - 0.5);
        vertices.add(
            Vertex.arc(at.get(i), at.get(i).plus(chord.times(0.5)).plus(chord.left().times(bow))));
      } else {
        vertices.add(Vertex.at(at.get(i)));
      }
    }
    return new Outline(vertices);
  }

  /** Joints that cross the whole slab and beyond, so that no end is near an edge by chance. */
  private static Slab slab(Random random, Outline outline) {
    List<Joint> joints = new ArrayList<>();
    int n = 1 + random.nextInt(8);
    while (joints.size() < n) {
      Point middle = new Point(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100);
      Point reach = new Point(700, 0).turned(Math.PI * random.nextDouble());
      Path path = Path.straight(middle.minus(reach), middle.plus(reach));
      if (joints.stream().noneMatch(j -> endsNear(j.path(), path) || endsNear(path, j.path()))) {
        String id = "J" + (joints.size() + 1);
        joints.add(Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING));
      }
    }
    return Slab.of("slab", outline).withLaid(joints, List.of());
  }

  private static boolean endsNear(Path a, Path b) {
    return b.distance(a.start()) < 1 || b.distance(a.end()) < 1;
  }

  private static Slab moved(Slab slab, Point by) {
    List<Vertex> vertices =
        slab.outline().vertices().stream()
            .map(v -> v.moved(v.at().plus(by), v.via().map(m -> m.plus(by))))
            .toList();
    List<Joint> joints =
        slab.joints().stream()
            .map(j -> j.withPath(Path.straight(j.path().start().plus(by), j.path().end().plus(by))))
            .toList();
    return slab.withOutline(new Outline(vertices)).withLaid(joints, List.of());
  }
}
