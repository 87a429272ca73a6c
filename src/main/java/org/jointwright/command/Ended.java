package org.jointwright.command;

/** How a command that did not come to its end ends: with what there is to say, and a code. */
final class Ended {
  private Ended() {}

  /** Says why; a fault of our own is reported. */
  static int by(Throwable thrown, Console console, String... arguments) {
    if (thrown instanceof Stop stop) {
      console.say(String.valueOf(stop.getMessage()));
      return stop.code();
    }
    return new FaultReport(console, arguments).write(thrown);
  }
}
