package org.jointwright.designer.state;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.History;

/**
 * The plan, and where it is kept.
 *
 * @param history the plan with what led to it
 * @param file the file it is kept in
 * @param kept when it was kept there last
 * @param sheets the sheets that were written of it last
 */
public record Papers(
    History history, Optional<Path> file, Optional<LocalTime> kept, Optional<Sheets> sheets) {
  /**
   * Sheets that were written.
   *
   * @param plan the plan as it was then
   * @param files their files, the one that holds all pages first
   * @param canShow whether the system can be asked to show a file
   */
  public record Sheets(Plan plan, List<Path> files, boolean canShow) {
    /** Copies the list. */
    public Sheets {
      files = List.copyOf(files);
    }

    /** The file that the system can show, if it can. */
    public Optional<Path> shown() {
      return canShow ? files.stream().findFirst() : Optional.empty();
    }
  }

  /** A plan of which no sheets were written yet. */
  Papers(History history, Optional<Path> file, Optional<LocalTime> kept) {
    this(history, file, kept, Optional.empty());
  }

  /** The same file, another history. */
  public Papers with(History value) {
    return new Papers(value, file, kept, sheets);
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
