package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.Weight;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Job;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/** A text of the plan has a letter that the sheet's font lacks. */
public final class UnprintableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String text;
  private final String letter;

  private UnprintableException(String text, String letter) {
    super("no glyph for " + letter + " in " + text);
    this.text = text;
    this.letter = letter;
  }

  /** The text it stands in. */
  public String text() {
    return text;
  }

  /** The letter. */
  public String letter() {
    return letter;
  }

  /** Refuses a plan that the sheets cannot print. */
  static void check(Plan plan) throws UnprintableException {
    Job job = plan.job();
    List<String> texts = new ArrayList<>();
    texts.addAll(
        List.of(job.name(), job.site(), job.client(), job.date(), job.revision(), job.notes()));
    plan.slabs().stream().map(Slab::id).forEach(texts::add);
    plan.fixed().stream().map(FixedObject::id).forEach(texts::add);
    Typeface face = Typeface.of(Weight.REGULAR);
    for (String text : texts) {
      int[] signs = text.codePoints().filter(c -> c >= ' ' && !face.has(c)).toArray();
      if (signs.length > 0) {
        throw new UnprintableException(text, Character.toString(signs[0]));
      }
    }
  }
}
