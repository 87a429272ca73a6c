package org.jointwright.designer.pane;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.jointwright.app.FileNames;
import org.jointwright.app.Sheets;
import org.jointwright.app.work.Work;
import org.jointwright.designer.facts.Deed;
import org.jointwright.designer.print.PrintOrder;
import org.jointwright.designer.settings.RecentFiles;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Outside;
import org.jointwright.designer.state.Papers;
import org.jointwright.designer.state.PhotoLaid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.WorkOnDesk;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** What can be done with the job as a whole: begin, open, keep, write the sheets, close. */
public final class JobWork {
  private static final String ENDING = ".jointwright.json";

  private final Board board;
  private final Workshop workshop;
  private final Outside outside;
  private final Chooser chooser;
  private final RecentFiles recent;
  private final Supplier<LocalTime> clock;
  private final Runnable closing;
  private Consumer<Boolean> writingWatcher = w -> {};
  private Consumer<Outside.Printout> printingWatcher = p -> {};
  private boolean isWriting;
  private final AtomicBoolean isStopped = new AtomicBoolean();

  /** The files of sheets that were written of the plan on the desk, here or another day. */
  private final Set<Path> sheets = new HashSet<>();

  /** Files of others that the user has agreed to write over. */
  private final Set<Path> agreed = new HashSet<>();

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
    this.recent = places.recent();
    this.clock = clock;
    this.closing = closing;
  }

  /**
   * Where plans come from and go to.
   *
   * @param outside the program behind the window
   * @param chooser asks the user
   * @param recent where they came from lately
   */
  public record Places(Outside outside, Chooser chooser, RecentFiles recent) {}

  /** The plans that were opened or saved lately, the latest first. */
  List<Path> recent() {
    return recent.all();
  }

  /** Does what a button or a menu says. */
  void act(Deed deed) {
    switch (deed.what()) {
      case Deed.OnDesk on -> board.change(on.change());
      case Deed.ToPhoto p -> photo();
      case Deed.WriteSheets w -> sheets();
      case Deed.Print p -> print();
      case Deed.ShowFile f -> show(f.file());
    }
  }

  /** Has the system show a file, as a double click on it would. */
  void show(Path file) {
    board.change(Desk::untold);
    workshop.run(
        () -> outside.show(file), done -> {}, "window.notice.notShown", String.valueOf(file));
  }

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
    switch (next.kind()) {
      case BEGIN -> {
        forgetSheets();
        board.change(d -> Desk.blank().onPaperOf(d));
      }
      case OPEN -> next.file().or(chooser::planToOpen).ifPresent(this::open);
      case SAMPLE -> sample();
      case CLOSE -> closing.run();
      case OVER_SHEETS -> next.file().ifPresent(this::sheetsInto);
    }
  }

  /** Writes over what was named, and asks once more where that is not all any longer. */
  void overSheets(Notice.Next next, List<String> names) {
    next.file().ifPresent(f -> names.forEach(n -> agreed.add(f.resolve(n))));
    proceed(next);
  }

  /** Another plan may be of the same name: its sheets are not those of the one before. */
  private void forgetSheets() {
    sheets.clear();
    agreed.clear();
  }

  /** Keeps the plan, then goes on. */
  void keepThen(Notice.Next next) {
    board.change(Desk::untold);
    save(() -> proceed(next));
  }

  /** Opens a plan file. */
  public void open(Path file) {
    open(file, () -> {});
  }

  /** Opens a plan file, then does {@code then}, whether it could be read or not. */
  public void open(Path file, Runnable then) {
    Words words = board.words();
    workshop.run(
        () -> outside.open(file, words),
        opened -> {
          opened(file, opened);
          then.run();
        },
        "window.notice.notOpened",
        String.valueOf(file.getFileName()));
  }

  private void opened(Path file, Outside.Opened opened) {
    String name = String.valueOf(file.getFileName());
    switch (opened) {
      case Outside.Read read -> {
        recent.add(file);
        forgetSheets();
        board.change(d -> onDesk(read, file).onPaperOf(d));
        if (read.isInSheet()) {
          board.change(d -> d.told(Notice.word("window.notice.fromSheet", read.repairs(), name)));
        } else if (!read.repairs().isEmpty()) {
          board.change(d -> d.told(Notice.word("window.notice.mended", read.repairs(), name)));
        }
      }
      case Outside.Refused refused -> {
        if (!Files.exists(file)) {
          recent.forget(file);
        }
        board.change(
            d -> d.told(Notice.trouble("window.notice.refused", refused.problems(), name)));
      }
    }
  }

  /** A plan out of a sheet has no file: keeping it must never write over the sheet. */
  private static Desk onDesk(Outside.Read read, Path file) {
    return read.isInSheet()
        ? Desk.begun(read.plan()).withStep(Step.JOINTS)
        : Desk.opened(read.plan(), file);
  }

  /** The sample, as a plan that is on no disk of the user's. */
  private void sample() {
    Words words = board.words();
    workshop.run(
        () -> outside.sample(words),
        opened ->
            plan(opened)
                .ifPresent(
                    p -> {
                      forgetSheets();
                      board.change(d -> Desk.begun(p).withStep(Step.JOINTS).onPaperOf(d));
                    }),
        "window.notice.noSample");
  }

  /** Takes what was dropped on the window: a plan is opened, a picture laid beneath the plan. */
  public void dropped(Path file, Optional<Point> at) {
    if (Endings.isPicture(file)) {
      layPhoto(file, at);
    } else {
      next(Notice.Next.opening(file));
    }
  }

  /** The photo beneath, or one that the user names where there is none. */
  public void photo() {
    if (board.desk().plan().photo().isPresent()) {
      board.change(d -> d.withStep(Step.OUTLINE).picking(new Pick.AtPhoto()));
    } else {
      chooser.photo().ifPresent(f -> layPhoto(f, Optional.empty()));
    }
  }

  private void layPhoto(Path file, Optional<Point> at) {
    String name = String.valueOf(file.getFileName());
    Words words = board.words();
    workshop.run(
        () -> outside.photo(file, words),
        read -> {
          read.picture().ifPresent(p -> board.change(d -> PhotoLaid.on(d, name, p, at)));
          read.trouble()
              .ifPresent(
                  t ->
                      board.change(
                          d -> d.told(Notice.trouble("window.notice.noPhoto", List.of(t), name))));
        },
        "window.notice.noPhoto",
        name);
  }

  /** Brings back work that a window left which did not come to its end. */
  public void bringBack(Work work) {
    Words words = board.words();
    workshop.run(
        () -> work.file().map(f -> outside.open(f, words)).flatMap(JobWork::plan),
        inFile -> {
          String key = work.file().isPresent() ? "window.notice.back" : "window.notice.backUnnamed";
          String name = work.file().map(f -> String.valueOf(f.getFileName())).orElse("");
          Notice back = Notice.word(key, List.of(), name);
          forgetSheets();
          board.change(d -> WorkOnDesk.back(work, inFile).onPaperOf(d).told(back));
        },
        "window.notice.notBack");
  }

  private static Optional<Plan> plan(Outside.Opened opened) {
    return opened instanceof Outside.Read read ? Optional.of(read.plan()) : Optional.empty();
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
    String name =
        FileNames.of(board.desk().plan().job()).orElseGet(() -> board.say("window.file.unnamed"));
    return chooser.placeForPlan(name + ENDING).flatMap(this::withEnding);
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
            recent.add(file);
            board.change(d -> d.keptIn(file, plan, clock.get()));
            then.run();
          }
        },
        "window.notice.notKept");
  }

  /**
   * Tells {@code watcher}, from here on the only one, when sheets begin to be written, and when
   * that has ended.
   */
  void whenWriting(Consumer<Boolean> watcher) {
    writingWatcher = watcher;
  }

  /** Whether sheets are being written. */
  boolean isWriting() {
    return isWriting;
  }

  private void writing(boolean value) {
    isWriting = value;
    writingWatcher.accept(value);
  }

  /** Leaves off writing sheets; what is not written whole is not written at all. */
  void stopWriting() {
    isStopped.set(true);
  }

  /**
   * Tells {@code watcher}, from here on the only one, what there is to print when that is asked.
   */
  void whenPrinting(Consumer<Outside.Printout> watcher) {
    printingWatcher = watcher;
  }

  /** Asks what to print of the sheets, and where. */
  void print() {
    if (!board.desk().plan().isLaid() && board.desk().laying().isCurrent()) {
      board.change(d -> d.told(Notice.trouble("window.notice.noSheets", List.of())));
      return;
    }
    writing(true);
    isStopped.set(false);
    // Behind any layout still being worked out, as when they are written.
    workshop.afterLaying(this::printNow);
  }

  private void printNow() {
    Plan plan = board.desk().plan();
    Sheets.Wanted wanted = board.desk().papers().setup().wanted(board.words());
    workshop.run(
        () -> {
          try {
            return outside.pages(plan, wanted, () -> !isStopped.get());
          } finally {
            Platform.runLater(() -> writing(false));
          }
        },
        made -> {
          if (!made.pages().isEmpty()) {
            printingWatcher.accept(made);
          } else if (!made.trouble().isEmpty()) {
            board.change(d -> d.told(Notice.trouble("window.notice.notPrinted", made.trouble())));
          }
        },
        "window.notice.notPrinted");
  }

  /** Asks the same of sheets on another paper. */
  void printOn(String paper) {
    board.change(d -> d.wanting(d.papers().setup().on(paper)));
    print();
  }

  /** Prints what was chosen, and tells of it. */
  void print(PrintOrder order) {
    workshop.run(
        () -> outside.print(order),
        isTaken ->
            board.change(
                d ->
                    d.told(
                        isTaken
                            ? Notice.word("window.notice.printed", List.of(), order.printer())
                            : Notice.trouble(
                                "window.notice.refusedByPrinter", List.of(), order.printer()))),
        "window.notice.notPrinted");
  }

  /** Writes the sheets into a folder that the user names. */
  public void sheets() {
    chooser.folderForSheets().ifPresent(this::sheetsInto);
  }

  /** What was not written here may be what somebody has agreed to: it is asked first. */
  private void sheetsInto(Path folder) {
    List<Plan> ours = board.desk().papers().versions();
    Optional<Path> file = board.desk().papers().file();
    Sheets.Wanted wanted = board.desk().papers().setup().wanted(board.words());
    workshop.run(
        () -> outside.sheetsThere(ours, wanted, folder, file),
        there -> {
          List<String> others =
              names(
                  there.files().stream()
                      .filter(f -> !sheets.contains(f) && !agreed.contains(f))
                      // Of another day: not asked about, but what a pen has marked is kept.
                      .filter(f -> !there.own().contains(f))
                      .toList());
          if (others.isEmpty()) {
            writeSheets(folder);
          } else {
            board.change(d -> d.told(Notice.overSheets(folder, others)));
          }
        },
        "window.notice.notWritten");
  }

  private void writeSheets(Path folder) {
    writing(true);
    isStopped.set(false);
    // Behind any layout still being worked out: its joints are what the sheets are for.
    workshop.afterLaying(() -> sheetsNow(folder));
  }

  private static List<String> names(List<Path> files) {
    return files.stream().map(f -> String.valueOf(f.getFileName())).toList();
  }

  private void sheetsNow(Path folder) {
    Plan plan = board.desk().plan();
    Optional<Path> file = board.desk().papers().file();
    Sheets.Wanted wanted = board.desk().papers().setup().wanted(board.words());
    Set<Path> own = Set.copyOf(sheets);
    workshop.run(
        () -> {
          try {
            return outside.sheets(plan, wanted, folder, file, own, () -> !isStopped.get());
          } finally {
            Platform.runLater(() -> writing(false));
          }
        },
        written -> {
          if (written.isStopped()) {
            board.change(d -> d.told(Notice.word("window.notice.writingStopped", List.of())));
          } else if (written.trouble().isEmpty()) {
            sheets.addAll(written.files());
            Papers.Sheets done = new Papers.Sheets(plan, written.files(), written.canShow());
            List<String> names = new ArrayList<>(names(written.files()));
            if (!written.older().isEmpty()) {
              String older = String.join(", ", names(written.older()));
              names.add(board.say("window.notice.olderSheets", older));
            }
            Notice told =
                Notice.word("window.notice.written", names, folder.toString())
                    .showing(done.shown());
            board.change(d -> d.printed(done).told(told));
          } else {
            board.change(
                d -> d.told(Notice.trouble("window.notice.notWritten", written.trouble())));
          }
        },
        "window.notice.notWritten");
  }
}
