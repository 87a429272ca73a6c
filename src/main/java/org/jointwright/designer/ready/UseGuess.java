package org.jointwright.designer.ready;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/** Who will use a slab, guessed so that nobody need be asked; whoever drew it can say otherwise. */
public final class UseGuess {
  /**
   * Twice the area by the perimeter of a place for one car, 8 by 16 ft, inches: what is narrower,
   * however it bends, takes none. Common practice, no source.
   */
  private static final double ONE_CAR = 64;

  /** What a use was guessed from. */
  public enum From {
    /** What the slab is called. */
    NAME,
    /** How large it is. */
    SIZE
  }

  private UseGuess() {}

  /** What the use of a slab was guessed from; empty where somebody has said it, or a file did. */
  public static Optional<From> from(History history, String slab) {
    String id = slab;
    for (History.Step step : history.past().reversed()) {
      Edit edit = step.edit();
      if (edit instanceof SlabEdit.SetUse u && u.id().equals(id)) {
        return Optional.empty();
      }
      if (edit instanceof Together t
          && t.edits().contains(new SlabEdit.SetUse(id, use(step, id)))) {
        return Optional.of(From.NAME);
      }
      if (edit instanceof SlabEdit.Add a && a.slab().id().equals(id)) {
        return Optional.of(From.SIZE);
      }
      if (edit instanceof SlabEdit.Rename r && r.to().equals(id)) {
        id = r.id();
      }
    }
    return Optional.empty();
  }

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

  private static Use use(History.Step step, String slab) {
    return step.after().slab(slab).map(Slab::use).orElse(Use.CAR);
  }

  private static boolean holds(String name, String known, Locale locale) {
    return List.of(known.toLowerCase(locale).split(" ", 0)).stream().anyMatch(name::contains);
  }
}
