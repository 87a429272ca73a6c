package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.Spread;
import org.jointwright.plan.Slab.Finishing;
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
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line(
            Item.SURFACE,
            List.of(),
            new Amount.OfArea(all),
            List.of(Step.of("surface", slabs, all)),
            List.of()));
    lines.addAll(
        sharing(
            layout,
            Item.FINISH,
            f -> f.finish().isPresent() ? Optional.of(f.uncolored()) : Optional.empty(),
            f -> Finishing.keyOf(f.finish() + f.pattern())));
    lines.addAll(
        sharing(
            layout,
            Item.SHAKE_ON,
            f -> f.isColored() && !f.isMixColored() ? Optional.of(f.color()) : Optional.empty(),
            Finishing::keyOf));
    lines.add(liquid(Item.CURE, all, Covering.CURE));
    lines.add(liquid(Item.SEALER, all, Covering.SEAL));
    lines.add(mesh(layout));
    return lines;
  }

  /**
   * The areas of slabs that share something of their finishing, by what tells it apart: only the
   * areas, for how much of a color goes onto them is its maker's to say.
   */
  private static <T> List<Line> sharing(
      Layout layout, Item item, Function<Finishing, Optional<T>> what, Function<T, String> key) {
    Map<String, T> first = new LinkedHashMap<>();
    Map<String, List<Double>> areas = new LinkedHashMap<>();
    for (SlabLayout s : layout.slabs()) {
      what.apply(s.slab().finishing())
          .ifPresent(
              t -> {
                first.putIfAbsent(key.apply(t), t);
                areas
                    .computeIfAbsent(key.apply(t), k -> new ArrayList<>())
                    .add(s.concrete().squareInches());
              });
    }
    List<Line> lines = new ArrayList<>();
    first.forEach(
        (name, t) -> {
          List<Double> each = areas.getOrDefault(name, List.of());
          Area all = new Area(each.stream().mapToDouble(a -> a).sum());
          lines.add(
              new Line(
                  item,
                  List.of(t),
                  new Amount.OfArea(all),
                  List.of(Step.of("surface", each.size(), all)),
                  List.of()));
        });
    return lines;
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
