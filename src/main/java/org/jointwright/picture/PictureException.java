package org.jointwright.picture;

/** Bytes that are no picture for a plan. */
public final class PictureException extends Exception {
  private static final long serialVersionUID = 1;

  private final Why why;

  PictureException(Why why) {
    super(why.name());
    this.why = why;
  }

  /** What is wrong with them. */
  public enum Why {
    /** They are neither PNG nor JPEG. */
    NO_PICTURE,
    /** They begin as one and are cut off or spoilt. */
    BROKEN,
    /** More than {@link Picture#MOST_BYTES}. */
    TOO_BIG,
    /** More pixels than {@link Picture#MOST_PIXELS}. */
    TOO_MANY_PIXELS
  }

  /** What is wrong with them. */
  public Why why() {
    return why;
  }
}
