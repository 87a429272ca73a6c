package org.jointwright.app;

/** What the program is called. */
public final class Program {
  /** Its name. */
  public static final String NAME = "Jointwright";

  /** Its version. */
  public static final String VERSION = "0.1.0";

  private Program() {}
}
