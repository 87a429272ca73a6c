package org.jointwright.designer.pane;

import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.util.Duration;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Wish;

/**
 * What takes long, quietly: joints being laid or sheets being written for more than a second, and
 * that both can be stopped, by the button or by Esc on the paper. After a laying that was stopped
 * before it found anything, the way to begin it again.
 */
final class Busy extends HBox {
  private static final Duration LONG = Duration.seconds(1);

  private final Board board;
  private final JobWork job;
  private final Label what = new Label();
  private final ProgressBar bar = new ProgressBar();
  private final Button button = new Button();
  private final PauseTransition laying = new PauseTransition(LONG);
  private final PauseTransition writing = new PauseTransition(LONG);
  private long waitedFor = -1;

  Busy(Board board, JobWork job) {
    super(14);
    this.board = board;
    this.job = job;
    setId("busy");
    getStyleClass().add("busy");
    what.getStyleClass().add("hint-line");
    what.setId("busy-what");
    bar.setAccessibleText(board.say("window.busy.bar"));
    button.setId("busy-button");
    button.getStyleClass().add("small");
    setAlignment(Pos.CENTER_LEFT);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    setVisible(false);
    laying.setOnFinished(e -> show(board.desk()));
    writing.setOnFinished(e -> show(board.desk()));
    job.whenWriting(
        isWriting -> {
          if (isWriting) {
            writing.playFromStart();
          } else {
            writing.stop();
          }
          show(board.desk());
        });
    board.watch(this::watch);
  }

  private void watch(Desk desk) {
    long now = isLaying(desk) ? desk.laying().wish().map(Wish::generation).orElse(-1L) : -1;
    if (now != waitedFor) {
      waitedFor = now;
      laying.stop();
      if (now >= 0) {
        laying.playFromStart();
      }
    }
    show(desk);
  }

  private static boolean isLaying(Desk desk) {
    return !desk.laying().isCurrent();
  }

  private static boolean isOver(PauseTransition pause) {
    return pause.getStatus() != PauseTransition.Status.RUNNING;
  }

  private void show(Desk desk) {
    if (job.isWriting() && isOver(writing)) {
      say("window.busy.writing", "window.busy.stop", job::stopWriting, true);
    } else if (isLaying(desk) && isOver(laying)) {
      say("window.busy.laying", "window.busy.stop", () -> board.change(Desk::stopped), true);
    } else if (desk.laying().isGivenUp() && !desk.plan().slabs().isEmpty()) {
      say("window.busy.stopped", "window.busy.again", () -> board.change(Desk::layingAgain), false);
    } else {
      setVisible(false);
      bar.setProgress(0);
    }
  }

  private void say(String text, String label, Runnable action, boolean isGoingOn) {
    if (getChildren().isEmpty()) {
      // Not before: the first window would wait for the look of what it does not show.
      getChildren().addAll(what, bar, button);
    }
    what.setText(board.say(text));
    button.setText(board.say(label));
    button.setOnAction(e -> action.run());
    bar.setVisible(isGoingOn);
    bar.setManaged(isGoingOn);
    bar.setProgress(isGoingOn ? ProgressBar.INDETERMINATE_PROGRESS : 0);
    setVisible(true);
  }

  /** Stops what takes long, where that is shown; says whether it was. */
  boolean stop() {
    boolean isGoingOn = isVisible() && bar.isVisible();
    if (isGoingOn) {
      button.fire();
    }
    return isGoingOn;
  }
}
