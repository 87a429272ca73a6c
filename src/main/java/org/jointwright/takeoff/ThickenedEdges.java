package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.jointwright.joint.EdgeSection;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Section;
import org.jointwright.shape.Corner;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/**
 * What a slab takes besides its thickness where its edges are thicker: under each such edge a wedge
 * that is deepest at the edge and ends some way in. Two wedges that meet at a corner are mitred; an
 * arc counts as long as it is at the edge.
 */
final class ThickenedEdges {
  private final Slab slab;
  private final List<Step> steps = new ArrayList<>();
  private final Set<Cited> sources = new LinkedHashSet<>();
  private double inches;

  private ThickenedEdges(Slab slab) {
    this.slab = slab;
  }

  /** The wedges of a slab; empty where it has none. */
  static Optional<Line> of(Slab slab) {
    ThickenedEdges all = new ThickenedEdges(slab);
    all.add(slab.outline().ring(), slab::edge, false);
    for (Opening o : slab.openings()) {
      all.add(o.outline().ring(), o::edge, true);
    }
    return all.steps.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Line(
                Item.THICKENED,
                List.of(slab.id()),
                new Amount.OfVolume(new Volume(all.inches)),
                all.steps,
                List.copyOf(all.sources)));
  }

  private void add(Ring ring, IntFunction<EdgeSetting> settings, boolean isHole) {
    List<Edge> edges = ring.edges();
    List<Corner> corners = Corner.of(edges, 0);
    for (int i = 0; i < edges.size(); i++) {
      Optional<Thickened> thickened = settings.apply(i).thickened();
      if (thickened.isPresent()) {
        double mitres = 0;
        for (Corner c : corners) {
          if (c.before() == i || c.after() == i) {
            int other = c.before() == i ? c.after() : c.before();
            double solid = isHole ? 360 - c.interior() : c.interior();
            mitres += mitre(solid, settings.apply(other).thickened().isPresent());
          }
        }
        add(thickened.get(), edges.get(i).length(), mitres);
      }
    }
  }

  private void add(Thickened edge, double length, double mitres) {
    Length thickness = slab.thickness();
    Length depth = EdgeSection.depth(edge, slab);
    Length over = EdgeSection.over(edge);
    double more = depth.inches() - thickness.inches();
    if (more <= 0) {
      return;
    }
    double volume = wedge(more, over.inches(), length, mitres);
    inches += volume;
    steps.add(
        Step.of(
            "thickened",
            slab.id(),
            Length.inches(length),
            depth,
            thickness,
            over,
            new Volume(volume)));
    if (edge.depth().isEmpty()) {
      sources.addAll(Section.THICKENED_EDGE.sources());
    }
    if (edge.over().isEmpty()) {
      sources.addAll(Section.THICKENED_TAPER.sources());
    }
  }

  /**
   * How much shorter a wedge gets with each inch from its edge, at a corner where the solid has so
   * many degrees: half way to the next wedge; else along the next side where that leans over it.
   */
  private static double mitre(double solid, boolean meetsAnother) {
    double angle = Math.toRadians(solid);
    return meetsAnother ? 1 / Math.tan(angle / 2) : solid < 90 ? 1 / Math.tan(angle) : 0;
  }

  /**
   * A wedge {@code more} deep at its edge, which ends {@code over} from it: the sum over the
   * distance y from the edge of more (1 - y / over) (length - y mitres), as far as there is any.
   */
  private static double wedge(double more, double over, double length, double mitres) {
    double to = mitres > 0 ? Math.min(over, length / mitres) : over;
    return more
        * (length * to
            - (length / over + mitres) * to * to / 2
            + mitres * to * to * to / (3 * over));
  }
}
