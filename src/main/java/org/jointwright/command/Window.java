package org.jointwright.command;

import java.nio.file.Path;
import java.util.Optional;

/** The window, which the command line opens without knowing it. */
@FunctionalInterface
public interface Window {
  /**
   * Opens the window and comes back when it is closed.
   *
   * @param plan the plan file to show; a new plan where empty
   * @return whether there is a display to open it on
   */
  boolean open(Optional<Path> plan);

  /**
   * Opens the window and closes it by itself: at once, or when the plan is laid.
   *
   * @param shown what is done as soon as the window is painted
   * @return whether there is a display to open it on
   */
  default boolean glimpse(Optional<Path> plan, Runnable shown) {
    return false;
  }
}
