package org.jointwright.command;

/** How a command went: the exit codes. */
final class Outcome {
  /** Done. */
  static final int DONE = 0;

  /** A check found something broken. */
  static final int BROKEN = 1;

  /** Asked for in a way that is not understood. */
  static final int USAGE = 2;

  /** The input was refused. */
  static final int REFUSED = 3;

  /** The output could not be written. */
  static final int NOT_WRITTEN = 4;

  /** A fault of the program. */
  static final int FAULT = 70;

  private Outcome() {}
}
