package org.jointwright.sheet.page;

/** A file that looks like a sheet holds no plan that could be opened. */
public final class NoPlanInsideException extends Exception {
  private static final long serialVersionUID = 1L;

  private final Why why;
  private final int line;

  /**
   * No plan.
   *
   * @param line the line of the file where that shows, from 1; 0 where there is none to name
   */
  public NoPlanInsideException(Why why, int line) {
    super(why.name());
    this.why = why;
    this.line = line;
  }

  /** What is wrong with the file. */
  public enum Why {
    /** It breaks off, or is spoilt. */
    BROKEN,
    /** It is locked with a password. */
    LOCKED,
    /** It never held a plan, or has lost it. */
    NONE,
    /** It holds several, and nothing says which is meant. */
    SEVERAL
  }

  /** What is wrong. */
  public Why why() {
    return why;
  }

  /** The line where that shows, from 1; 0 where there is none to name. */
  public int line() {
    return line;
  }
}
