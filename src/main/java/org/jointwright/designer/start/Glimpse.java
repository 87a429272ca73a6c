package org.jointwright.designer.start;

import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.state.Desk;

/**
 * A short look at the window: what it takes until something can be seen, and until a plan is laid.
 *
 * @param board the window's board
 * @param open opens a plan, where one was asked for
 * @param shown what is done once the window is painted
 * @param close closes the window
 */
record Glimpse(Board board, Optional<Runnable> open, Runnable shown, Runnable close) {
  /** The first pulse has what it finds painted; at the next one that is being done. */
  private static final int PULSES = 1;

  void begin() {
    new AnimationTimer() {
      private int left = PULSES;

      @Override
      public void handle(long now) {
        if (--left < 0) {
          stop();
          await();
        }
      }
    }.start();
  }

  /**
   * What paints does one thing after the other, and hands each on to the screen: when it has made
   * this picture of nothing, the window’s is handed on before it, and there before what is done
   * later.
   */
  private void await() {
    new Region().snapshot(null, new WritableImage(1, 1));
    Platform.runLater(this::painted);
  }

  private void painted() {
    shown.run();
    open.ifPresentOrElse(this::lay, close);
  }

  private void lay(Runnable opening) {
    opening.run();
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        Desk desk = board.desk();
        boolean isOver = desk.papers().file().isPresent() && desk.laying().isCurrent();
        if (isOver || desk.notice().isPresent()) {
          stop();
          close.run();
        }
      }
    }.start();
  }
}
