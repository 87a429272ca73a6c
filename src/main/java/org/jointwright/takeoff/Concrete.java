package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Limit;
import org.jointwright.practice.Ordering;

/** How much concrete the slabs take, and how much is ordered. */
final class Concrete {
  /** Rounding up must not be set off by the noise of arithmetic. */
  private static final double NOISE = 1e-9;

  private Concrete() {}

  static List<Line> of(Layout layout, UnitSystem sold) {
    List<Line> lines = new ArrayList<>();
    double plain = 0;
    double over = 0;
    Mixes mixes = new Mixes();
    for (SlabLayout s : layout.slabs()) {
      Area area = s.concrete();
      Length thickness = s.slab().thickness();
      Volume volume = Volume.under(area, thickness);
      double inches = volume.cubicInches();
      over += Volume.under(area, Ordering.UNEVEN.value()).cubicInches();
      lines.add(
          new Line(
              Item.SLAB,
              List.of(s.slab().id(), thickness),
              new Amount.OfVolume(volume),
              List.of(Step.of("slab", s.slab().id(), area, thickness, volume)),
              List.of()));
      Optional<Line> thickened = ThickenedEdges.of(s.slab());
      if (thickened.isPresent()) {
        lines.add(thickened.get());
        inches += volume(thickened.get()).cubicInches();
      }
      plain += inches;
      mixes.add(s.slab().finishing(), inches);
    }
    Volume slabs = new Volume(plain);
    Line allowance = allowance(slabs, new Volume(over));
    lines.add(allowance);
    List<Line> each = mixes.lines(volume(allowance), v -> roundedUp(v, sold));
    lines.addAll(each);
    Line ordered = each.isEmpty() ? ordered(slabs, volume(allowance), sold) : ordered(each);
    lines.add(ordered);
    lines.add(loads(each.isEmpty() ? List.of(ordered) : each, sold));
    return lines;
  }

  private static Volume volume(Line line) {
    return ((Amount.OfVolume) line.amount()).value();
  }

  /** Of one mix. */
  private static Line ordered(Volume slabs, Volume allowance, UnitSystem sold) {
    Volume wanted = new Volume(slabs.cubicInches() + allowance.cubicInches());
    Volume ordered = roundedUp(wanted, sold);
    return ordered(ordered, Step.of("concrete", slabs, allowance, wanted, ordered));
  }

  /** Of several mixes, each rounded up. */
  private static Line ordered(List<Line> each) {
    Volume all = new Volume(each.stream().mapToDouble(l -> volume(l).cubicInches()).sum());
    return ordered(all, Step.of("mixes", each.size(), all));
  }

  private static Line ordered(Volume volume, Step how) {
    return new Line(
        Item.CONCRETE,
        List.of(),
        new Amount.OfVolume(volume),
        List.of(how),
        Ordering.SOLD_BY.sources());
  }

  /** For an uneven base and what is lost on the way, at least the usual least share. */
  private static Line allowance(Volume slabs, Volume uneven) {
    double lost = Ordering.LOSS.value() * (slabs.cubicInches() + uneven.cubicInches());
    double both = uneven.cubicInches() + lost;
    double least = Ordering.LEAST.value() * slabs.cubicInches();
    List<Step> how = new ArrayList<>();
    how.add(Step.of("uneven", Ordering.UNEVEN.value(), uneven));
    how.add(Step.of("loss", Ordering.LOSS.value(), new Volume(lost)));
    if (both < least) {
      how.add(Step.of("least", Ordering.LEAST.value(), new Volume(least)));
    }
    List<Cited> sources = new ArrayList<>(Ordering.UNEVEN.sources());
    sources.addAll(Ordering.LOSS.sources());
    if (both < least) {
      sources.addAll(Ordering.LEAST.sources());
    }
    return new Line(
        Item.ALLOWANCE,
        List.of(),
        new Amount.OfVolume(new Volume(Math.max(both, least))),
        how,
        sources);
  }

  /** By the quarter yard, or the quarter of a cubic metre. */
  private static Volume roundedUp(Volume volume, UnitSystem sold) {
    VolumeUnit unit = VolumeUnit.of(sold);
    double step = Ordering.SOLD_BY.value().in(VolumeUnit.CUBIC_YARD);
    return Volume.of(Math.ceil(volume.in(unit) / step - NOISE) * step, unit);
  }

  /** The trucks of all mixes; no truck brings two. */
  private static Line loads(List<Line> mixes, UnitSystem sold) {
    Limit<Volume> load =
        switch (sold) {
          case FEET_INCHES -> Ordering.LOAD;
          case METRIC -> Ordering.METRIC_LOAD;
        };
    double full = load.value().cubicInches();
    int all = 0;
    List<Step> how = new ArrayList<>();
    Set<Cited> sources = new LinkedHashSet<>(load.sources());
    for (Line mix : mixes) {
      Volume ordered = volume(mix);
      int loads = (int) Math.ceil(ordered.cubicInches() / full - NOISE);
      how.add(Step.of("loads", ordered, load.value(), loads));
      Volume last = new Volume(ordered.cubicInches() - (loads - 1) * full);
      if (last.cubicInches() < Ordering.SHORT_LOAD.value().cubicInches()) {
        how.add(Step.of("shortLoad", last, Ordering.SHORT_LOAD.value()));
        sources.addAll(Ordering.SHORT_LOAD.sources());
      }
      all += loads;
    }
    return new Line(Item.LOADS, List.of(), new Amount.Pieces(all), how, List.copyOf(sources));
  }
}
