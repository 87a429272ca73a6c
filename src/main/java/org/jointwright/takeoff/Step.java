package org.jointwright.takeoff;

import java.util.List;

/**
 * One step of how a figure was worked out, to be said in the reader's words.
 *
 * @param key its words
 * @param arguments what goes into them: names, figures, measures
 */
public record Step(String key, List<Object> arguments) {
  /** Copies the list. */
  public Step {
    arguments = List.copyOf(arguments);
  }

  static Step of(String key, Object... arguments) {
    return new Step("takeoff.how." + key, List.of(arguments));
  }
}
