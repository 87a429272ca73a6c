package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Depth;

/**
 * Compares depths: what is dug is the slab and its base; filler is as deep as a slab is thick; no
 * cut goes through.
 */
final class Depths {
  private final Reading reading;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Thickness> thick = new ArrayList<>();

  /** How thick a slab is, as it is said or as it follows; both in inches. */
  private record Thickness(double inches, double half) {}

  Depths(Reading reading) {
    this.reading = reading;
    reading.slabs().forEach(this::slab);
    reading.orders().dig().forEach(this::dug);
    reading.strips().forEach(s -> strip(s.depth()));
    reading.orders().cuts().forEach(c -> cut(c.depth()));
  }

  List<Fault> faults() {
    return faults;
  }

  private void slab(Reading.Slab slab) {
    thick.add(new Thickness(slab.thickness().inches(), slab.thickness().half()));
    Optional<Figure> dig = of(slab.name(), reading.orders().dig());
    Optional<Figure> base = of(slab.name(), reading.orders().base());
    if (dig.isPresent() && base.isPresent()) {
      Figure d = dig.get();
      double sum = base.get().inches() + slab.thickness().inches();
      double allowed = d.half() + base.get().half() + slab.thickness().half();
      if (Math.abs(d.inches() - sum) > allowed + 1e-6) {
        faults.add(Fault.of(Fault.Kind.DEEP, d, sum, allowed));
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
                  new Thickness(dig.depth().inches() - b.inches(), dig.depth().half() + b.half())));
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
    boolean found =
        thick.stream()
            .anyMatch(t -> Math.abs(t.inches() - depth.inches()) <= t.half() + depth.half() + 1e-6);
    if (!found && !thick.isEmpty()) {
      faults.add(Fault.of(Fault.Kind.DEPTH, depth));
    }
  }

  private void cut(Figure depth) {
    if (!thick.isEmpty() && thick.stream().allMatch(t -> t.inches() <= depth.inches())) {
      faults.add(Fault.of(Fault.Kind.DEPTH, depth));
    }
  }
}
