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
}
