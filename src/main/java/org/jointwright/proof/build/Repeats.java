package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Where;

/** Compares what is printed in two places: marks on joints, sizes of cuts, widths of filler. */
final class Repeats {
  /** What is printed the same way in both places is the same but for the noise; inches. */
  private static final double NOISE = 0.01;

  private final Reading reading;
  private final List<Fault> faults = new ArrayList<>();

  Repeats(Reading reading) {
    this.reading = reading;
    tees();
    sizes();
    widths();
    bar();
  }

  List<Fault> faults() {
    return faults;
  }

  private static boolean same(Figure a, Figure b) {
    return Math.abs(a.inches() - b.inches()) <= NOISE;
  }

  /** Where a joint ends on another, and what is listed of that one. */
  private void tees() {
    if (reading.tees().isEmpty()) {
      return;
    }
    List<Where.OnJoint> ends =
        reading.rows().stream()
            .flatMap(r -> Stream.of(r.from(), r.to()))
            .filter(Where.OnJoint.class::isInstance)
            .map(Where.OnJoint.class::cast)
            .toList();
    for (Where.OnJoint end : ends) {
      List<Figure> listed = reading.tees().getOrDefault(end.number(), List.of());
      if (listed.stream().noneMatch(f -> Stops.mark(f).is(end.along()))) {
        faults.add(Fault.of(Fault.Kind.UNLISTED, end.along()));
      }
    }
    reading
        .tees()
        .forEach(
            (number, listed) ->
                listed.stream()
                    .filter(f -> ends.stream().noneMatch(e -> meets(e, number, f)))
                    .forEach(f -> faults.add(Fault.of(Fault.Kind.STRAY, f))));
  }

  private static boolean meets(Where.OnJoint end, int number, Figure listed) {
    return end.number() == number && Stops.mark(listed).is(end.along());
  }

  /** The size over a table is one of those that the orders tell. */
  private void sizes() {
    List<Reading.Cut> told = reading.orders().cuts();
    for (Reading.Cut size : reading.sizes()) {
      if (told.stream()
          .noneMatch(c -> same(c.depth(), size.depth()) && same(c.width(), size.width()))) {
        faults.add(Fault.of(Fault.Kind.SIZE, size.depth()));
      }
    }
  }

  /** The widths of the strips are those that the legend tells. */
  private void widths() {
    List<Figure> told = reading.widths();
    List<Figure> strips = reading.strips().stream().map(Reading.Strip::width).toList();
    if (!told.isEmpty() && !strips.isEmpty()) {
      onlyIn(strips, told);
      onlyIn(told, strips);
    }
  }

  private void onlyIn(List<Figure> some, List<Figure> others) {
    some.stream()
        .filter(f -> others.stream().noneMatch(o -> same(f, o)))
        .forEach(f -> faults.add(Fault.of(Fault.Kind.WIDTH, f)));
  }

  /** The figures of a scale bar stand at equal steps. */
  private void bar() {
    List<Figure> bar = reading.bar();
    for (int i = 1; i < bar.size(); i++) {
      double equal = bar.getFirst().inches() * (i + 1);
      if (Math.abs(bar.get(i).inches() - equal) > NOISE) {
        faults.add(Fault.of(Fault.Kind.STEP, bar.get(i), equal, 0));
        return;
      }
    }
  }
}
