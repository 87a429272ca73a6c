package org.jointwright.takeoff;

import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.Spread;
import org.jointwright.practice.Covering;
import org.jointwright.practice.Limit;

/** What goes by the area: cure, sealer, wire. */
final class Surface {
  private static final double NOISE = 1e-9;

  private Surface() {}

  static List<Line> of(Layout layout) {
    Area all =
        new Area(layout.slabs().stream().mapToDouble(s -> s.concrete().squareInches()).sum());
    int slabs = layout.slabs().size();
    return List.of(
        new Line(
            Item.SURFACE,
            List.of(),
            new Amount.OfArea(all),
            List.of(Step.of("surface", slabs, all)),
            List.of()),
        liquid(Item.CURE, all, Covering.CURE),
        liquid(Item.SEALER, all, Covering.SEAL),
        mesh(layout));
  }

  private static Line liquid(Item item, Area all, Limit<Spread> rate) {
    Liquid needed = rate.value().over(all);
    return new Line(
        item,
        List.of(),
        new Amount.OfLiquid(needed),
        List.of(Step.of("liquid", all, rate.value(), needed)),
        rate.sources());
  }

  /** Sheets that lap at one side and one end. */
  private static Line mesh(Layout layout) {
    double lap = Covering.LAP.value().inches();
    double net = 1;
    for (Length side : Covering.SHEET.value()) {
      net *= side.inches() - lap;
    }
    double covered = net;
    int sheets =
        layout.slabs().stream()
            .mapToInt(s -> (int) Math.ceil(s.concrete().squareInches() / covered - NOISE))
            .sum();
    return new Line(
        Item.MESH,
        List.copyOf(Covering.SHEET.value()),
        new Amount.Pieces(sheets),
        List.of(Step.of("mesh", new Area(covered), Covering.LAP.value(), sheets)),
        Covering.SHEET.sources());
  }
}
