package org.jointwright.designer.sketch;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.designer.sketch.Vocabulary.Meaning;

/** Two ways along one line of the paper. A figure goes one of them, and may say which. */
public enum TwoWays {
  /** To the right, or back to the left. */
  LEVEL(Meaning.RIGHT, Meaning.LEFT),
  /** Up, or back down. */
  PLUMB(Meaning.UP, Meaning.DOWN);

  private static final Pattern WITH_WORD =
      Pattern.compile("(?<figure>.*?)\\s*(?<word>\\p{L}+)\\s*");

  private final Meaning on;
  private final Meaning back;

  TwoWays(Meaning on, Meaning back) {
    this.on = on;
    this.back = back;
  }

  /**
   * A figure without its word.
   *
   * @param figure the rest of what was typed
   * @param isBack whether it goes left or down
   */
  public record Measured(String figure, boolean isBack) {}

  /**
   * What {@code text} says: {@code 14'}, or {@code 14' left}.
   *
   * @param isBack the way it goes where it says none
   */
  public Measured read(String text, boolean isBack, Vocabulary vocabulary) {
    Matcher said = WITH_WORD.matcher(text);
    Optional<Meaning> way =
        said.matches() ? vocabulary.meaning(said.group("word")) : Optional.empty();
    return way.filter(w -> w == on || w == back)
        .map(w -> new Measured(said.group("figure"), w == back))
        .orElseGet(() -> new Measured(text, isBack));
  }
}
