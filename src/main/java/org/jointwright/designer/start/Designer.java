package org.jointwright.designer.start;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.jointwright.app.work.WorkPlace;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.facts.HeadFacts;
import org.jointwright.designer.node.Magnified;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.pane.Chooser;
import org.jointwright.designer.pane.JobWork;
import org.jointwright.designer.pane.WindowPane;
import org.jointwright.designer.pane.Workshop;
import org.jointwright.designer.settings.OwnFolder;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Outside;

/** The window with all that belongs to it. Made and used on the JavaFX thread. */
public final class Designer {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;
  private static final double LEAST_WIDTH = 800;

  /** How often the window is laid out at a size: a pane may make its parts anew meanwhile. */
  private static final int ROUNDS = 3;

  private static final double LEAST_HEIGHT = 560;

  private final Memory memory;
  private final SystemLook system = new SystemLook();
  private final Board board;
  private final Workshop workshop;
  private final JobWork job;
  private final Stage stage;
  private WindowPane pane;
  private Magnified root;
  private Optional<SafeKeeping> keeping = Optional.empty();

  /**
   * A window that asks {@code outside} and {@code chooser}.
   *
   * @param memory what it knows from the last time
   */
  Designer(Stage stage, Outside outside, Optional<Chooser> chooser, Memory memory) {
    this.stage = stage;
    this.memory = memory;
    board = new Board(Desk.blank(), memory.settings().read());
    workshop = new Workshop(board, outside);
    Chooser asking = chooser.orElseGet(() -> new FxChooser(stage, board));
    job =
        new JobWork(
            board,
            workshop,
            new JobWork.Places(outside, asking, memory.recent()),
            LocalTime::now,
            this::close);
    pane = furnished();
    root = new Magnified(pane, times());
    stage.setScene(new Scene(root, WIDTH, HEIGHT));
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    // A menu has room for one key only; half of the world’s programs do again with this one.
    KeyCombination again = KeyCombination.valueOf("Shortcut+Shift+Z");
    stage.getScene().getAccelerators().put(again, () -> board.change(Desk::redone));
    board.watch(this::title);
    board.whenSettled(this::settled);
    system.watch(this::furnish);
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          job.next(Notice.Next.CLOSE);
        });
    // However the window goes, nothing of it may live on: threads and watchers would hold it all.
    stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, e -> letGo());
  }

  private void letGo() {
    pane.close();
    workshop.close();
    system.close();
  }

  private WindowPane furnished() {
    Brush brush = new Brush(system.theme(board.settings().look()), times());
    return board.furnish(() -> new WindowPane(board, job, brush));
  }

  private double times() {
    return board.settings().text().times(system.textTimes());
  }

  private void settled() {
    memory.settings().write(board.settings());
    furnish();
    title(board.desk());
  }

  /** Makes the window anew round the same desk. */
  private void furnish() {
    pane.close();
    pane = furnished();
    root = new Magnified(pane, times());
    stage.getScene().setRoot(root);
    pane.plan().requestFocus();
  }

  private void title(Desk desk) {
    HeadFacts head = HeadFacts.of(desk, board.words());
    stage.setTitle(
        head.isKept()
            ? board.say("window.title", head.job())
            : board.say("window.titleNotKept", head.job()));
  }

  /** Keeps the work in the window safe in {@code place} from here on. */
  void keepSafe(WorkPlace place) {
    keeping = Optional.of(new SafeKeeping(board, place));
  }

  private void close() {
    keeping.ifPresent(SafeKeeping::close);
    stage.close();
  }

  /** The board. */
  Board board() {
    return board;
  }

  /** All that the window shows. */
  Magnified root() {
    return root;
  }

  /** The window's content, of the size that the look is meant in. */
  WindowPane pane() {
    return pane;
  }

  /** The window's content as it would be at that size, whatever the screen's. */
  WritableImage picture(int width, int height) {
    return sized(width, height, all -> all.snapshot(null, new WritableImage(width, height)));
  }

  /** What {@code look} sees in the window's content as it would be at that size. */
  <T> T sized(int width, int height, Function<Region, T> look) {
    double wide = root.getWidth();
    double high = root.getHeight();
    root.resize(width, height);
    for (int i = 0; i < ROUNDS; i++) {
      root.applyCss();
      root.layout();
    }
    pane.plan().paint();
    T seen = look.apply(root);
    root.resize(wide, high);
    return seen;
  }

  /** What keeps the work safe, where anything does. */
  Optional<SafeKeeping> keeping() {
    return keeping;
  }

  /** The work on the job. */
  JobWork job() {
    return job;
  }

  /**
   * Opens the window, on a plan where one is named, and waits until it is closed.
   *
   * @throws IllegalStateException when there is no screen to open it on
   */
  public static void open(Optional<Path> plan) {
    Begin begin = Begin.at(plan);
    run(
        Optional.of(OwnFolder.path()),
        d -> {
          begin.place().ifPresent(d::keepSafe);
          begin.with(d.board, d.job);
        });
  }

  /**
   * Opens the window, and closes it by itself: without a plan once it is painted, else once the
   * plan is laid.
   *
   * @param shown what is done as soon as the window is painted
   * @throws IllegalStateException when there is no screen to open it on
   */
  public static void glimpse(Optional<Path> plan, Runnable shown) {
    run(
        Optional.empty(),
        d -> new Glimpse(d.board, plan.map(f -> () -> d.job.open(f)), shown, d::close).begin());
  }

  /** Runs a window, which remembers nothing where it has no folder. */
  private static void run(Optional<Path> folder, Consumer<Designer> begin) {
    if (!Display.isThere()) {
      throw noScreen(new UnsupportedOperationException());
    }
    Display.choosePainter();
    CompletableFuture<Boolean> closed = new CompletableFuture<>();
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    try {
      Platform.startup(() -> show(folder, begin, closed));
    } catch (UnsupportedOperationException e) {
      // Not to be ended either: what never started waits for its start for ever.
      throw noScreen(e);
    }
    try {
      closed.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the window could not be opened", e);
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
      Platform.exit();
    }
  }

  private static void show(
      Optional<Path> folder, Consumer<Designer> begin, CompletableFuture<Boolean> closed) {
    try {
      Stage stage = new Stage();
      Memory memory = folder.isPresent() ? Memory.ofUser() : Memory.only(Settings.FIRST);
      Designer designer = new Designer(stage, new Program(), Optional.empty(), memory);
      folder.ifPresent(f -> StagePlace.remember(stage, f));
      Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> designer.tell(fault));
      stage.setOnHidden(e -> closed.complete(true));
      stage.show();
      designer.pane.plan().requestFocus();
      begin.accept(designer);
    } catch (Throwable fault) {
      // Nobody would close a window that never came up; the caller is told instead.
      closed.completeExceptionally(fault);
    }
  }

  /**
   * Tells the user of a fault that nothing else caught, from whatever thread. The same fault is
   * told once only, for telling it may be what fails.
   */
  void tell(Throwable fault) {
    String what = Optional.ofNullable(fault.getMessage()).orElse(fault.getClass().getSimpleName());
    Optional<Notice> notice = Optional.of(Notice.trouble("window.notice.failed", List.of(what)));
    Platform.runLater(
        () -> board.change(d -> d.notice().equals(notice) ? d : d.told(notice.orElseThrow())));
  }

  private static IllegalStateException noScreen(UnsupportedOperationException cause) {
    return new IllegalStateException("there is no screen", cause);
  }
}
