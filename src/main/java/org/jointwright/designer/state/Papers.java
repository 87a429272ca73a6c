package org.jointwright.designer.state;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Optional;
import org.jointwright.plan.edit.History;

/**
 * The plan, and where it is kept.
 *
 * @param history the plan with what led to it
 * @param file the file it is kept in
 * @param kept when it was kept there last
 */
public record Papers(History history, Optional<Path> file, Optional<LocalTime> kept) {
  /** The same file, another history. */
  public Papers with(History value) {
    return new Papers(value, file, kept);
  }

  /** Whether all the user did stands on the disk. Where nothing was done nothing can be lost. */
  public boolean isKept() {
    return history.isSaved() || (!history.canUndo() && !history.canRedo());
  }

  /** Whether the file is as the user left it, but for joints that were laid since it was read. */
  public boolean isOnlyLaid() {
    return file.isPresent() && isKept() && !history.isSaved();
  }
}
