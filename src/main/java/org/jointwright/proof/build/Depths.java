package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Depth;
import org.jointwright.proof.read.Reading.Thicker;

/**
 * Compares depths: what is dug is the slab and its base; filler is as deep as a slab is thick; no
 * cut goes through.
 */
final class Depths {
  private final Reading reading;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Thickness> thick = new ArrayList<>();

  /** The noise of arithmetic, inches. */
  private static final double NOISE = 1e-6;

  /**
   * How thick a slab is, as it is said or as it follows, inches.
   *
   * @param bases the base that is said of it, where one is
   */
  private record Thickness(double inches, double half, List<Figure> bases) {}

  Depths(Reading reading) {
    this.reading = reading;
    reading.slabs().forEach(this::slab);
    reading.orders().dig().forEach(this::dug);
    reading.strips().forEach(s -> strip(s.depth()));
    reading.orders().cuts().forEach(c -> cut(c.depth()));
    reading.orders().thicker().forEach(this::thicker);
  }

  List<Fault> faults() {
    return faults;
  }

  private void slab(Reading.Slab slab) {
    Figure t = slab.thickness();
    Optional<Figure> dig = of(slab.name(), reading.orders().dig());
    Optional<Figure> base = of(slab.name(), reading.orders().base());
    thick.add(new Thickness(t.inches(), t.half(), base.stream().toList()));
    if (dig.isPresent() && base.isPresent()) {
      double allowed = dig.get().half() + base.get().half() + t.half();
      if (!adds(dig.get(), t, base.get(), allowed)) {
        double sum = base.get().inches() + t.inches();
        faults.add(Fault.of(Fault.Kind.DEEP, dig.get(), sum, allowed));
      }
    }
  }

  /** The plan may have no room for a slab's thickness; it follows from what is dug there. */
  private void dug(Depth dig) {
    List<String> names = dig.slabs().isEmpty() ? List.of("") : dig.slabs();
    for (String name : names) {
      Optional<Figure> base = of(name, reading.orders().base());
      base.ifPresent(
          b ->
              thick.add(
                  new Thickness(
                      dig.depth().inches() - b.inches(),
                      dig.depth().half() + b.half(),
                      List.of(b))));
    }
  }

  /** The depth that is said of a slab, whose name the plan may have cut short. */
  private static Optional<Figure> of(String name, List<Depth> depths) {
    String begin = name.endsWith("…") ? name.substring(0, name.length() - 1) : name;
    boolean cut = !begin.equals(name);
    return depths.stream()
        .filter(
            d ->
                d.slabs().isEmpty()
                    || d.slabs().stream().anyMatch(s -> cut ? s.startsWith(begin) : s.equals(name)))
        .map(Depth::depth)
        .findFirst();
  }

  private void strip(Figure depth) {
    if (!thick.isEmpty() && thick.stream().noneMatch(t -> fits(t, depth))) {
      faults.add(Fault.of(Fault.Kind.DEPTH, depth));
    }
  }

  /** An edge is thicker than its slab, and dug for with the base of a slab that thick. */
  private void thicker(Thicker edges) {
    for (String side : edges.sides()) {
      if (side.matches("[A-Z]+–[A-Z]+") && !reading.sides().containsKey(side)) {
        faults.add(Fault.of(Fault.Kind.NO_SIDE, edges.edge().place(), side));
      }
    }
    strip(edges.slab());
    if (edges.edge().inches() < edges.slab().inches()) {
      faults.add(Fault.of(Fault.Kind.DEPTH, edges.edge()));
    }
    List<Figure> bases = new ArrayList<>();
    for (Thickness t : thick) {
      if (fits(t, edges.slab())) {
        bases.addAll(t.bases());
      }
    }
    Figure dig = edges.dig();
    double half = dig.half() + edges.edge().half();
    if (!bases.isEmpty()
        && bases.stream().noneMatch(b -> adds(dig, edges.edge(), b, half + b.half()))) {
      Figure b = bases.getFirst();
      double sum = edges.edge().inches() + b.inches();
      faults.add(Fault.of(Fault.Kind.DEEP, dig, sum, half + b.half()));
    }
  }

  private static boolean adds(Figure dig, Figure slab, Figure base, double allowed) {
    return Math.abs(dig.inches() - slab.inches() - base.inches()) <= allowed + NOISE;
  }

  private static boolean fits(Thickness thickness, Figure depth) {
    return Math.abs(thickness.inches() - depth.inches()) <= thickness.half() + depth.half() + NOISE;
  }

  private void cut(Figure depth) {
    if (!thick.isEmpty() && thick.stream().allMatch(t -> t.inches() <= depth.inches())) {
      faults.add(Fault.of(Fault.Kind.DEPTH, depth));
    }
  }
}
