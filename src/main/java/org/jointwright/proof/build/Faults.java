package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;

/** Gathers what cannot be right about a sheet. */
public final class Faults {
  private Faults() {}

  /** The faults, what is nearest to its cause first. */
  public static List<Fault> of(Reading reading, Closing closing) {
    List<Fault> faults = new ArrayList<>();
    reading.riddles().forEach(r -> faults.add(Fault.of(Fault.Kind.RIDDLE, r.place(), r.text())));
    letters(reading, faults);
    for (Integer number : closing.rebuilt().lost()) {
      faults.add(Fault.of(Fault.Kind.LOST, String.valueOf(number)));
    }
    open(closing, faults);
    faults.addAll(new MarkCount(reading, closing.rebuilt()).faults());
    faults.addAll(new Depths(reading).faults());
    faults.addAll(new Repeats(reading).faults());
    return faults;
  }

  private static void letters(Reading reading, List<Fault> faults) {
    for (Reading.Side s : reading.sides().values()) {
      for (String letter : List.of(s.from(), s.to())) {
        if (!reading.letters().containsKey(letter)) {
          faults.add(Fault.of(Fault.Kind.NO_LETTER, s.length().place(), letter));
        }
      }
    }
  }

  private static void open(Closing closing, List<Fault> faults) {
    List<Closing.Judged> open = closing.judged().stream().filter(j -> !j.holds()).toList();
    if (open.isEmpty()) {
      return;
    }
    Optional<Closing.Suspect> suspect = closing.suspect();
    if (suspect.isPresent()) {
      Figure f = suspect.get().figure();
      faults.add(Fault.of(Fault.Kind.FIGURE, f, suspect.get().inches(), f.half()));
      return;
    }
    for (Closing.Judged j : open) {
      Miss m = j.miss();
      faults.add(
          new Fault(
              Fault.Kind.OPEN,
              Optional.empty(),
              Optional.of(m.kind()),
              m.name(),
              m.printed(),
              Optional.of(m.is()),
              j.allowed()));
    }
  }
}
