package org.jointwright.designer.start;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import org.jointwright.app.work.Work;
import org.jointwright.app.work.WorkPlace;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.WorkOnDesk;

/**
 * Keeps the work on a board safe in a place of its own, a moment after each change and never onto
 * the user's file. What is saved in the user's file is not kept a second time. Used on the JavaFX
 * thread; written on another.
 */
final class SafeKeeping {
  /** Work is in danger no longer than this and the time that writing takes. */
  private static final Duration MOMENT = Duration.seconds(1);

  private final Board board;
  private final WorkPlace place;
  private final PauseTransition pause = new PauseTransition(MOMENT);
  private final ExecutorService disk =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "safe-keeping");
            t.setDaemon(true);
            return t;
          });
  private Optional<Work> kept;
  private boolean isWriting;
  private boolean wasToldOfTrouble;
  private boolean isClosed;

  /**
   * Keeps the work on {@code board} in {@code place}, where {@code board}'s own may lie already.
   */
  SafeKeeping(Board board, WorkPlace place) {
    this.board = board;
    this.place = place;
    kept = place.left();
    pause.setOnFinished(e -> look());
    board.watch(d -> changed());
  }

  private void changed() {
    boolean isAtWork = isClosed || isWriting || pause.getStatus() == PauseTransition.Status.RUNNING;
    if (!isAtWork && !isKeptAsIs(WorkOnDesk.of(board.desk()))) {
      pause.playFromStart();
    }
  }

  // The same plan is the same work; comparing whole plans at each change would be slow.
  @SuppressWarnings("ReferenceEquality")
  private boolean isKeptAsIs(Optional<Work> now) {
    if (now.isEmpty() || kept.isEmpty()) {
      return now.isEmpty() == kept.isEmpty();
    }
    Work a = now.get();
    Work b = kept.get();
    return a.plan() == b.plan() && a.file().equals(b.file()) && a.halfDrawn().equals(b.halfDrawn());
  }

  private void look() {
    Optional<Work> now = WorkOnDesk.of(board.desk());
    if (isKeptAsIs(now)) {
      return;
    }
    isWriting = true;
    disk.execute(
        () -> {
          Optional<String> trouble = write(now);
          Platform.runLater(() -> written(now, trouble));
        });
  }

  private Optional<String> write(Optional<Work> work) {
    try {
      if (work.isPresent()) {
        place.keep(work.get());
      } else {
        place.clear();
      }
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      String what = Optional.ofNullable(e.getMessage()).orElse(e.getClass().getSimpleName());
      return Optional.of(what);
    }
  }

  private void written(Optional<Work> work, Optional<String> trouble) {
    isWriting = false;
    if (trouble.isEmpty()) {
      kept = work;
      wasToldOfTrouble = false;
    } else if (!wasToldOfTrouble) {
      wasToldOfTrouble = true;
      Notice notice = Notice.trouble("window.notice.notSafe", List.of(trouble.get()));
      board.change(d -> d.told(notice));
    }
    changed();
  }

  /** Ends with the window: what is on the desk is in the user's file, or was given up. */
  void close() {
    isClosed = true;
    pause.stop();
    disk.execute(
        () -> {
          write(Optional.empty());
          place.close();
        });
    disk.shutdown();
    awaitQuietly();
  }

  /** Waits for the disk, so that what was given up does not come back. */
  private void awaitQuietly() {
    try {
      disk.awaitTermination(5, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether all that is on the desk is safe, on the disk of this machine or in the user's file. */
  boolean isAllSafe() {
    return !isWriting && isKeptAsIs(WorkOnDesk.of(board.desk()));
  }
}
