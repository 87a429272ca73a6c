package org.jointwright.designer.state;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.app.SheetKind;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.History;
import org.jointwright.text.Words;

/**
 * The plan, and where it is kept.
 *
 * @param history the plan with what led to it
 * @param file the file it is kept in
 * @param kept when it was kept there last
 * @param sheets the sheets that were written of it last
 * @param setup which sheets are wanted of it
 */
public record Papers(
    History history,
    Optional<Path> file,
    Optional<LocalTime> kept,
    Optional<Sheets> sheets,
    Setup setup) {
  /**
   * Which sheets are written and printed.
   *
   * @param kinds the kinds that are wanted, at least one
   * @param paper the name of their paper; empty for the usual where the measures shown are usual
   * @param how whether the order sheet says how its amounts were worked out
   */
  public record Setup(Set<SheetKind> kinds, Optional<String> paper, boolean how) {
    /** All there are. */
    public static final Setup ALL =
        new Setup(EnumSet.allOf(SheetKind.class), Optional.empty(), false);

    /** Copies the set. */
    public Setup {
      kinds = Set.copyOf(kinds);
    }

    /** With a kind, or without it; the last one stays. */
    public Setup with(SheetKind kind, boolean wanted) {
      Set<SheetKind> now = EnumSet.copyOf(kinds);
      if (wanted) {
        now.add(kind);
      } else {
        now.remove(kind);
      }
      return now.isEmpty() ? this : new Setup(now, paper, how);
    }

    /** On another paper. */
    public Setup on(String value) {
      return new Setup(kinds, Optional.of(value), how);
    }

    /** Saying how amounts were worked out, or not. */
    public Setup saying(boolean value) {
      return new Setup(kinds, paper, value);
    }

    /** The paper’s name. */
    public String paper(UnitSystem units) {
      return paper.orElse(units == UnitSystem.METRIC ? "a4" : "letter");
    }

    /** What is asked of the program, in these words. */
    public org.jointwright.app.Sheets.Wanted wanted(Words words) {
      return new org.jointwright.app.Sheets.Wanted(
          kinds.stream().sorted().toList(), words, paper(words.units()), how);
    }
  }

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
    this(history, file, kept, Optional.empty(), Setup.ALL);
  }

  /**
   * The plan as it is, as it was saved, and as it was when it came on the desk: sheets of another
   * day were written of one of them.
   */
  public List<Plan> versions() {
    Stream<Plan> begun = history.past().stream().limit(1).map(History.Step::before);
    return Stream.concat(Stream.of(history.now()), Stream.concat(history.saved().stream(), begun))
        .distinct()
        .toList();
  }

  /** The same file, another history. */
  public Papers with(History value) {
    return new Papers(value, file, kept, sheets, setup);
  }

  /** Wanted otherwise. */
  public Papers with(Setup value) {
    return new Papers(history, file, kept, sheets, value);
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
