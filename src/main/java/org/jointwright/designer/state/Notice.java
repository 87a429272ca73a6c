package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;

/**
 * Something to tell the user, in a pane of its own over the plan.
 *
 * @param key what it says; its title is under {@code key + ".title"}
 * @param arguments what fills the places in the words
 * @param lines what follows, said already
 * @param isTrouble whether something went wrong
 * @param next what waits until the user has chosen whether to keep the plan first
 */
public record Notice(
    String key,
    List<Object> arguments,
    List<String> lines,
    boolean isTrouble,
    Optional<Next> next) {
  private static final String HALF_DRAWN = "window.notice.halfDrawn";

  /** What may wait for the plan to be kept. */
  public enum Next {
    /** A new plan. */
    BEGIN,
    /** Another plan. */
    OPEN,
    /** The end of the work. */
    CLOSE
  }

  /** Copies the lists. */
  public Notice {
    arguments = List.copyOf(arguments);
    lines = List.copyOf(lines);
  }

  /** Something that went wrong. */
  public static Notice trouble(String key, List<String> lines, Object... arguments) {
    return new Notice(key, List.of(arguments), lines, true, Optional.empty());
  }

  /** Something worth knowing. */
  public static Notice word(String key, List<String> lines, Object... arguments) {
    return new Notice(key, List.of(arguments), lines, false, Optional.empty());
  }

  /** An outline is half drawn, and what comes next would lose it. */
  public static Notice halfDrawn(Next next) {
    return new Notice(HALF_DRAWN, List.of(), List.of(), false, Optional.of(next));
  }

  /** Whether it is about an outline that is half drawn. */
  public boolean isHalfDrawn() {
    return key.equals(HALF_DRAWN);
  }

  /** The plan is not kept, and what comes next would lose it. */
  public static Notice keepFirst(Next next) {
    return new Notice("window.notice.keepFirst", List.of(), List.of(), false, Optional.of(next));
  }
}
