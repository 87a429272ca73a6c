package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Side;

/**
 * Counts the marks on the plan against those that tables and lists tell: every mark is printed once
 * more than once, so a figure that stands alone cannot be right. Which figure belongs to which side
 * is not looked for: they are told apart by what they say.
 */
final class MarkCount {
  private final List<Stop> must = new ArrayList<>();
  private final List<Stop> may = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  MarkCount(Reading reading, Rebuilt rebuilt) {
    Stops stops = new Stops(reading, rebuilt);
    for (Side side : reading.sides().values()) {
      List<Stop> made = new ArrayList<>(stops.made(side));
      made.removeIf(s -> Stops.isCorner(s, side.corners()));
      if (!side.marks().isEmpty()) {
        listed(side, made);
      } else {
        // Without a mark of its own a side may have found no room on the plan, and nobody misses
        // it.
        (made.isEmpty() ? may : must).addAll(made);
        (made.isEmpty() ? may : must).addAll(stops.fixed(side));
      }
    }
    reading.marks().stream()
        .collect(Collectors.groupingBy(f -> f.place().page()))
        .values()
        .forEach(this::onPage);
    List<Figure> all = reading.marks();
    Pairs pairs = new Pairs(must.size(), all.size(), (s, f) -> must.get(s).is(all.get(f)));
    pairs.alone().forEach(s -> missing(must.get(s)));
  }

  /** What is wrong with the marks. */
  List<Fault> faults() {
    return faults;
  }

  private void onPage(List<Figure> figures) {
    List<Stop> all = new ArrayList<>(must);
    all.addAll(may);
    Pairs pairs = new Pairs(figures.size(), all.size(), (f, s) -> all.get(s).is(figures.get(f)));
    pairs.alone().forEach(f -> faults.add(Fault.of(Fault.Kind.STRAY, figures.get(f))));
  }

  /** The marks of a side that are listed with it. */
  private void listed(Side side, List<Stop> made) {
    List<Figure> marks = side.marks();
    Pairs there = new Pairs(made.size(), marks.size(), (s, f) -> made.get(s).is(marks.get(f)));
    there.alone().forEach(s -> missing(made.get(s)));
    Pairs back = new Pairs(marks.size(), made.size(), (f, s) -> made.get(s).is(marks.get(f)));
    back.alone().forEach(f -> faults.add(Fault.of(Fault.Kind.STRAY, marks.get(f))));
  }

  private void missing(Stop stop) {
    if (stop.said().isEmpty()) {
      faults.add(Fault.of(Fault.Kind.RIM, stop.side()));
    } else {
      faults.add(Fault.of(Fault.Kind.MISSING, stop.said().getFirst()));
    }
  }
}
