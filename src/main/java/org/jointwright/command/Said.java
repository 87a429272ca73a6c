package org.jointwright.command;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.Set;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;
import org.jspecify.annotations.Nullable;

/** The words of the command line, and the same for the library that prints the help. */
final class Said extends ResourceBundle {
  /** Messages and help are in English; what a plan measures is said in the plan's own units. */
  static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private final Set<String> keys;

  /** The words for these keys, which the library wants to know beforehand. */
  Said(Set<String> keys) {
    this.keys = Set.copyOf(keys);
  }

  @Override
  protected @Nullable Object handleGetObject(String key) {
    // The library formats what it gets: a percent sign must be doubled to come out.
    return WORDS.knows(key) ? WORDS.say(key).replace("%", "%%") : null;
  }

  @Override
  public Enumeration<String> getKeys() {
    return Collections.enumeration(keys);
  }
}
