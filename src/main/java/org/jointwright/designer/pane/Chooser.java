package org.jointwright.designer.pane;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the user for places on the disk; empty where the user thinks better of it. */
public interface Chooser {
  /** A plan file to open. */
  Optional<Path> planToOpen();

  /** A picture to lie beneath the plan. */
  Optional<Path> photo();

  /** Where to keep a plan. */
  Optional<Path> placeForPlan(String suggestedName);

  /** The folder for the sheets. */
  Optional<Path> folderForSheets();
}
