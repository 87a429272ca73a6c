package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.measure.Weight;
import org.jointwright.practice.BaseStone;
import org.jointwright.practice.Cited;

/** How much stone the bases take: by the ton, from what lies compacted. */
final class Stone {
  private Stone() {}

  static List<Line> of(Layout layout) {
    List<Line> lines = new ArrayList<>();
    double compacted = 0;
    for (SlabLayout s : layout.slabs()) {
      Length base = s.slab().base();
      if (base.inches() <= 0) {
        continue;
      }
      // The base lies under the box-outs too: stone is spread before they are set.
      Area area = new Area(s.slab().region().area());
      Volume volume = Volume.under(area, base);
      compacted += volume.cubicInches();
      lines.add(
          new Line(
              Item.BASE,
              List.of(s.slab().id(), base),
              new Amount.OfVolume(volume),
              List.of(Step.of("base", s.slab().id(), area, base, volume)),
              List.of()));
    }
    if (lines.isEmpty()) {
      return lines;
    }
    Weight placed = BaseStone.COMPACTED.value().of(new Volume(compacted));
    Weight ordered = new Weight(placed.pounds() * (1 + BaseStone.WASTE.value()));
    Volume loose = BaseStone.LOOSE.value().of(ordered);
    List<Cited> sources = new ArrayList<>(BaseStone.COMPACTED.sources());
    sources.addAll(BaseStone.LOOSE.sources());
    lines.add(
        new Line(
            Item.STONE,
            List.of(loose),
            new Amount.OfWeight(ordered),
            List.of(
                Step.of("placed", new Volume(compacted), BaseStone.COMPACTED.value(), placed),
                Step.of("waste", BaseStone.WASTE.value(), ordered),
                Step.of("loose", ordered, loose)),
            sources));
    return lines;
  }
}
