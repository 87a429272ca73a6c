package org.jointwright.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/**
 * The panels that the joints of a plan cut, whoever laid them.
 *
 * <p>Joints may be as wrong as they like: an end within 1/2 in of a line is taken to reach it, a
 * joint that hangs in the air or cuts nothing is listed as loose, what lies outside the slab is no
 * panel.
 */
public final class Layouts {
  private Layouts() {}

  /** The layout of a plan from the joints and box-outs that are in it. */
  public static Layout of(Plan plan) {
    return new Layout(plan, plan.slabs().stream().map(s -> of(s, Cutouts.of(plan, s))).toList());
  }

  /** The layout of one slab as it is now, with what the plan says of its fixed objects. */
  public static SlabLayout of(Plan plan, Slab slab) {
    return of(slab, Cutouts.of(plan, slab));
  }

  /**
   * A layout with one slab changed, the others left as they are.
   *
   * @param changed takes the place of the slab of its name
   */
  public static Layout with(Layout layout, Slab changed) {
    Plan plan = layout.plan().withSlab(changed.id(), s -> changed);
    List<SlabLayout> slabs =
        layout.slabs().stream()
            .map(s -> s.slab().id().equals(changed.id()) ? of(plan, changed) : s)
            .toList();
    return new Layout(plan, slabs);
  }

  /** The layout of one slab of which no fixed objects are known. */
  public static SlabLayout of(Slab slab) {
    return of(slab, Cutouts.listedIn(slab));
  }

  private static SlabLayout of(Slab slab, List<Cutout> cutouts) {
    Faces faces = new Faces(Noding.pieces(Lines.of(slab, cutouts)));
    List<List<Side>> outers = new ArrayList<>();
    List<List<Side>> rims = new ArrayList<>();
    for (List<Side> ring : faces.rings()) {
      (signedArea(ring) > 0 ? outers : rims).add(ring);
    }
    outers.sort(upwards(slab));
    List<Panel> panels = new ArrayList<>();
    Clearings clearings = Clearings.of(slab.region(), cutouts);
    List<List<List<Side>>> holes = holesOf(outers, rims);
    for (int i = 0; i < outers.size(); i++) {
      Panel face = new Panel("P" + (panels.size() + 1), outers.get(i), holes.get(i));
      if (clearings.leave(insideOf(face.region()))) {
        panels.add(face);
      }
    }
    Set<Source> idle = faces.idleSources();
    List<Joint> loose =
        slab.joints().stream().filter(j -> idle.contains(new Source.OnJoint(j.id()))).toList();
    return new SlabLayout(slab, panels, loose);
  }

  private static Ring ring(List<Side> sides) {
    return new Ring(sides.stream().map(Side::edge).toList());
  }

  private static double signedArea(List<Side> sides) {
    return sides.size() < 2 ? 0 : ring(sides).signedArea();
  }

  /** Rims of holes, each given to the smallest face that holds it. */
  private static List<List<List<Side>>> holesOf(List<List<Side>> outers, List<List<Side>> rims) {
    List<List<List<Side>>> holes = new ArrayList<>();
    outers.forEach(o -> holes.add(new ArrayList<>()));
    for (List<Side> rim : rims) {
      if (rim.size() < 2) {
        continue;
      }
      Point inside = beside(rim.getFirst().edge());
      int best = -1;
      for (int i = 0; i < outers.size(); i++) {
        if (ring(outers.get(i)).contains(inside)
            && (best < 0 || signedArea(outers.get(i)) < signedArea(outers.get(best)))) {
          best = i;
        }
      }
      if (best >= 0) {
        holes.get(best).add(rim);
      }
    }
    return holes;
  }

  /** A point inside a region, as far from its lines as a few tries find. */
  private static Point insideOf(Region region) {
    Point best = region.outer().edges().getFirst().start();
    double far = -1;
    for (Edge e : region.outer().edges()) {
      double reach = Math.max(e.length(), 1) / 2;
      for (int halving = 0; halving < 12; halving++, reach /= 2) {
        Point p = e.at(0.5).plus(e.direction(0.5).left().times(reach));
        if (region.contains(p)) {
          double d = region.outer().distance(p);
          for (Ring hole : region.holes()) {
            d = Math.min(d, hole.distance(p));
          }
          if (d > far) {
            far = d;
            best = p;
          }
          break;
        }
      }
    }
    return best;
  }

  /** A point just to the left of an edge, which for the rim of a hole is outside the hole. */
  private static Point beside(Edge e) {
    return e.at(0.5).plus(e.direction(0.5).left().times(Noding.SAME / 2));
  }

  /** From below upwards, then from left to right; heights within an inch count as one. */
  private static Comparator<List<Side>> upwards(Slab slab) {
    Box box = slab.outline().ring().box();
    return Comparator.comparingLong(
            (List<Side> s) -> Math.round(ring(s).box().centre().y() - box.minY()))
        .thenComparingDouble(s -> ring(s).box().centre().x());
  }
}
