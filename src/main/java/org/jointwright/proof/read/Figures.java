package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.Rounding;
import org.jointwright.measure.UnitSystem;

/** The figures of a sheet as they are read, and what could not be read. */
final class Figures {
  private final UnitSystem units;
  private final List<Figure> all = new ArrayList<>();
  private final List<Riddle> riddles = new ArrayList<>();

  Figures(UnitSystem units) {
    this.units = units;
  }

  /** A length rounded to the step that a tape is read to. */
  Figure add(String text, Place place) {
    return add(text, units.rounding(), place);
  }

  /** A length to 1/16 in or 1 mm: what a whole arc or a bend hangs on. */
  Figure fine(String text, Place place) {
    return add(text, units.finest(), place);
  }

  /** A length that is as printed, such as a sum of printed ones. */
  Figure exact(String text, Place place) {
    return put(text, 0, place);
  }

  private Figure add(String text, Rounding step, Place place) {
    return put(text, step.step().inches() / 2, place);
  }

  private Figure put(String text, double half, Place place) {
    Figure figure = new Figure(all.size(), inches(text, place), half, place, text);
    all.add(figure);
    return figure;
  }

  private double inches(String text, Place place) {
    try {
      return LengthReader.read(text, LengthUnit.INCH).inches();
    } catch (LengthFormatException e) {
      riddle(place, text);
      return 0;
    }
  }

  /** Notes a text that is not understood. */
  void riddle(Place place, String text) {
    riddles.add(new Riddle(place, text));
  }

  /** Notes what is not there. */
  <T> Optional<T> riddled(Optional<T> known, Place place, String text) {
    if (known.isEmpty()) {
      riddle(place, text);
    }
    return known;
  }

  List<Figure> all() {
    return List.copyOf(all);
  }

  List<Riddle> riddles() {
    return List.copyOf(riddles);
  }
}
