package org.jointwright.designer.pane;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Outside;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/** What can be done with the job as a whole: begin, open, keep, write the sheets, close. */
public final class JobWork {
  private static final String ENDING = ".jointwright.json";

  private final Board board;
  private final Workshop workshop;
  private final Outside outside;
  private final Chooser chooser;
  private final Supplier<LocalTime> clock;
  private final Runnable closing;

  /**
   * The work on the job of {@code board}.
   *
   * @param clock tells when a plan was kept
   * @param closing closes the window
   */
  public JobWork(
      Board board, Workshop workshop, Places places, Supplier<LocalTime> clock, Runnable closing) {
    this.board = board;
    this.workshop = workshop;
    this.outside = places.outside();
    this.chooser = places.chooser();
    this.clock = clock;
    this.closing = closing;
  }

  /**
   * Where plans come from and go to.
   *
   * @param outside the program behind the window
   * @param chooser asks the user
   */
  public record Places(Outside outside, Chooser chooser) {}

  /** Begins a new plan, or closes, or opens another; keeps this one first if the user wants. */
  public void next(Notice.Next next) {
    if (board.desk().isHalfDrawn()) {
      board.change(d -> d.told(Notice.halfDrawn(next)));
    } else if (board.desk().isKept()) {
      proceed(next);
    } else {
      board.change(d -> d.told(Notice.keepFirst(next)));
    }
  }

  /** Goes on without the outline that is being drawn; the rest of the plan is asked for still. */
  void dropOutline(Notice.Next next) {
    board.change(d -> d.untold().letGo());
    next(next);
  }

  /** Goes on, whether the plan is kept or not. */
  void proceed(Notice.Next next) {
    board.change(Desk::untold);
    switch (next) {
      case BEGIN -> board.change(d -> Desk.blank().onPaperOf(d));
      case OPEN -> chooser.planToOpen().ifPresent(this::open);
      case CLOSE -> closing.run();
    }
  }

  /** Keeps the plan, then goes on. */
  void keepThen(Notice.Next next) {
    board.change(Desk::untold);
    save(() -> proceed(next));
  }

  /** Opens a plan file. */
  public void open(Path file) {
    Words words = board.words();
    workshop.run(
        () -> outside.open(file, words),
        opened -> opened(file, opened),
        "window.notice.notOpened",
        String.valueOf(file.getFileName()));
  }

  private void opened(Path file, Outside.Opened opened) {
    String name = String.valueOf(file.getFileName());
    switch (opened) {
      case Outside.Read read -> {
        board.change(d -> Desk.opened(read.plan(), file).onPaperOf(d));
        if (!read.repairs().isEmpty()) {
          board.change(d -> d.told(Notice.word("window.notice.mended", read.repairs(), name)));
        }
      }
      case Outside.Refused refused ->
          board.change(
              d -> d.told(Notice.trouble("window.notice.refused", refused.problems(), name)));
    }
  }

  /** Keeps the plan in its file, or asks where. */
  public void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    Optional<Path> file = board.desk().papers().file();
    file.or(this::askWhere).ifPresent(f -> keep(f, then));
  }

  /** Keeps the plan in another file. */
  public void saveAs() {
    askWhere().ifPresent(f -> keep(f, () -> {}));
  }

  private Optional<Path> askWhere() {
    String job = board.desk().plan().job().name().strip();
    String name = job.isEmpty() ? board.say("window.file.unnamed") : job;
    return chooser
        .placeForPlan(name.replaceAll("[^\\p{L}\\p{N} -]", "") + ENDING)
        .flatMap(this::withEnding);
  }

  /** The file with its ending; empty, and the user told, where that is another file's name. */
  private Optional<Path> withEnding(Path file) {
    String name = file.getFileName().toString();
    if (name.endsWith(".json")) {
      return Optional.of(file);
    }
    Path whole = file.resolveSibling(name + ENDING);
    if (Files.exists(whole)) {
      // The dialog asked about the name without its ending, so nobody agreed to lose this one.
      Notice taken = Notice.trouble("window.notice.taken", List.of(), name + ENDING);
      board.change(d -> d.told(taken));
      return Optional.empty();
    }
    return Optional.of(whole);
  }

  /** Keeps the plan as it stands; it does not wait for a layout still being worked out. */
  private void keep(Path file, Runnable then) {
    Plan plan = board.desk().plan();
    Words words = board.words();
    workshop.run(
        () -> outside.save(plan, file, words),
        trouble -> {
          if (trouble.isPresent()) {
            board.change(
                d -> d.told(Notice.trouble("window.notice.notKept", List.of(trouble.get()))));
          } else {
            board.change(d -> d.keptIn(file, plan, clock.get()));
            then.run();
          }
        },
        "window.notice.notKept");
  }

  /** Writes the crew's sheets into a folder that the user names. */
  public void sheets() {
    chooser.folderForSheets().ifPresent(this::sheetsInto);
  }

  private void sheetsInto(Path folder) {
    // Behind any layout still being worked out: its joints are what the sheets are for.
    workshop.afterLaying(() -> sheetsNow(folder));
  }

  private void sheetsNow(Path folder) {
    Plan plan = board.desk().plan();
    Optional<Path> file = board.desk().papers().file();
    Words words = board.words();
    workshop.run(
        () -> outside.sheets(plan, folder, file, words),
        written -> {
          if (written.trouble().isEmpty()) {
            List<String> names = written.files().stream().map(Path::toString).toList();
            board.change(d -> d.told(Notice.word("window.notice.written", names)));
          } else {
            board.change(
                d -> d.told(Notice.trouble("window.notice.notWritten", written.trouble())));
          }
        },
        "window.notice.notWritten");
  }
}
