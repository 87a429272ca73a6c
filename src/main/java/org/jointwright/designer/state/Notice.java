package org.jointwright.designer.state;

import java.nio.file.Path;
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
 * @param shows a file that the system can be asked to show
 */
public record Notice(
    String key,
    List<Object> arguments,
    List<String> lines,
    boolean isTrouble,
    Optional<Next> next,
    Optional<Path> shows) {
  private static final String HALF_DRAWN = "window.notice.halfDrawn";

  /**
   * What may wait for the plan to be kept.
   *
   * @param kind what it is
   * @param file the plan to open; empty where the user is asked, and for all else
   */
  public record Next(Kind kind, Optional<Path> file) {
    /** A new plan. */
    public static final Next BEGIN = new Next(Kind.BEGIN, Optional.empty());

    /** Another plan, which the user is asked for. */
    public static final Next OPEN = new Next(Kind.OPEN, Optional.empty());

    /** The sample. */
    public static final Next SAMPLE = new Next(Kind.SAMPLE, Optional.empty());

    /** The end of the work. */
    public static final Next CLOSE = new Next(Kind.CLOSE, Optional.empty());

    /** That plan. */
    public static Next opening(Path file) {
      return new Next(Kind.OPEN, Optional.of(file));
    }

    /** What may wait. */
    public enum Kind {
      /** A new plan. */
      BEGIN,
      /** Another plan. */
      OPEN,
      /** The sample. */
      SAMPLE,
      /** The end of the work. */
      CLOSE,
      /** Sheets written over others. */
      OVER_SHEETS
    }
  }

  /** Copies the lists. */
  public Notice {
    arguments = List.copyOf(arguments);
    lines = List.copyOf(lines);
  }

  /** Something that went wrong. */
  public static Notice trouble(String key, List<String> lines, Object... arguments) {
    return new Notice(key, List.of(arguments), lines, true, Optional.empty(), Optional.empty());
  }

  /** Something worth knowing. */
  public static Notice word(String key, List<String> lines, Object... arguments) {
    return new Notice(key, List.of(arguments), lines, false, Optional.empty(), Optional.empty());
  }

  /** An outline is half drawn, and what comes next would lose it. */
  public static Notice halfDrawn(Next next) {
    return waiting(HALF_DRAWN, next);
  }

  /** Whether it is about an outline that is half drawn. */
  public boolean isHalfDrawn() {
    return key.equals(HALF_DRAWN);
  }

  /** The plan is not kept, and what comes next would lose it. */
  public static Notice keepFirst(Next next) {
    return waiting("window.notice.keepFirst", next);
  }

  /** Sheets would be written over others, or over some that were changed since. */
  public static Notice overSheets(Path folder, List<String> names) {
    return new Notice(
        "window.notice.overSheets",
        List.of(folder.toString()),
        names,
        false,
        Optional.of(new Next(Next.Kind.OVER_SHEETS, Optional.of(folder))),
        Optional.empty());
  }

  private static Notice waiting(String key, Next next) {
    return new Notice(key, List.of(), List.of(), false, Optional.of(next), Optional.empty());
  }

  /** This notice with a file that the system can be asked to show. */
  public Notice showing(Optional<Path> file) {
    return new Notice(key, arguments, lines, isTrouble, next, file);
  }
}
