package org.jointwright;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs the command named by the arguments. */
  public static void main(String[] args) {}
}
