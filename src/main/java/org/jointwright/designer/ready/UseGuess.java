package org.jointwright.designer.ready;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Use;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/** Who will use a slab, guessed so that nobody need be asked; whoever drew it can say otherwise. */
public final class UseGuess {
  /**
   * Twice the area by the perimeter of a place for one car, 8 by 16 ft, inches: what is narrower,
   * however it bends, takes none. Common practice, no source.
   */
  private static final double ONE_CAR = 64;

  private UseGuess() {}

  /** By its size. */
  public static Use of(Outline outline) {
    Ring ring = outline.ring();
    return 2 * ring.area() / ring.perimeter() < ONE_CAR ? Use.FOOT : Use.CAR;
  }

  /** By what it is called; empty where the name tells nothing. */
  public static Optional<Use> of(String name, Words words) {
    String lower = name.toLowerCase(words.locale());
    if (holds(lower, words.say("window.guess.foot"), words.locale())) {
      return Optional.of(Use.FOOT);
    }
    return holds(lower, words.say("window.guess.cars"), words.locale())
        ? Optional.of(Use.CAR)
        : Optional.empty();
  }

  private static boolean holds(String name, String known, Locale locale) {
    return List.of(known.toLowerCase(locale).split(" ", 0)).stream().anyMatch(name::contains);
  }
}
