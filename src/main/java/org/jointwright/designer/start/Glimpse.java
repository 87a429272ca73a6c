package org.jointwright.designer.start;

import java.util.Optional;
import javafx.animation.AnimationTimer;
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
  /** The first pulse paints what it finds; at the next one it is on the screen. */
  private static final int PULSES = 2;

  void begin() {
    new AnimationTimer() {
      private int left = PULSES;

      @Override
      public void handle(long now) {
        if (--left < 0) {
          stop();
          painted();
        }
      }
    }.start();
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
