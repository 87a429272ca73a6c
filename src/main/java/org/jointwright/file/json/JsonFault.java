package org.jointwright.file.json;

/** A text that is not the JSON we read. */
public final class JsonFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong. */
  public enum Kind {
    /** There is nothing in it. */
    EMPTY,
    /** It breaks the grammar. */
    GRAMMAR,
    /** It stops before it is complete. */
    ENDS_EARLY,
    /** Something follows the value. */
    TRAILING,
    /** Objects and arrays lie too deep in each other. */
    TOO_DEEP,
    /** A name, a number or a string is too long. */
    TOO_LONG,
    /** An object names a key twice. */
    TWICE,
    /** NaN or an infinity. */
    NOT_FINITE
  }

  private static final int LONGEST_PATH = 60;

  private final Kind kind;
  private final String path;
  private final int line;
  private final int column;
  private final String near;

  JsonFault(Kind kind, String path, int line, int column, String near) {
    super(kind + " at " + line + ":" + column);
    this.kind = kind;
    this.path = path.length() <= LONGEST_PATH ? path : path.substring(0, LONGEST_PATH) + "…";
    this.line = line;
    this.column = column;
    this.near = near;
  }

  /** What is wrong. */
  public Kind kind() {
    return kind;
  }

  /** The value it happened in, {@code slabs[0].outline} for example, empty at the top. */
  public String path() {
    return path;
  }

  /** The line, from 1. */
  public int line() {
    return line;
  }

  /** The character in the line, from 1. */
  public int column() {
    return column;
  }

  /** A little of what stands there; the key for {@link Kind#TWICE}. */
  public String near() {
    return near;
  }
}
