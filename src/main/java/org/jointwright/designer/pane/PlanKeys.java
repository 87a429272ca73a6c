package org.jointwright.designer.pane;

import javafx.scene.input.KeyEvent;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.facts.TakeOut;
import org.jointwright.designer.hand.Nudge;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.shape.Point;

/** What keys do while the paper has the focus: the typed sentence, Enter, Esc, arrows, Delete. */
final class PlanKeys {
  /** More than this is no sentence. */
  private static final int LONGEST = 48;

  private final Board board;
  private final PlanHand hand;

  PlanKeys(Board board, PlanPane paper, PlanHand hand) {
    this.board = board;
    this.hand = hand;
    paper.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    paper.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private String sentence() {
    return board.desk().draft().map(Draft::typed).orElse("");
  }

  private void typed(KeyEvent e) {
    String c = e.getCharacter();
    if (e.isControlDown()
        || e.isMetaDown()
        || c.isEmpty()
        || c.charAt(0) < ' '
        || c.charAt(0) == 127) {
      return;
    }
    String before = sentence();
    boolean begins = before.isEmpty();
    if ((begins && !mayBegin(c)) || before.length() >= LONGEST) {
      return;
    }
    board.change(d -> Drafting.type(d, before + c));
    e.consume();
  }

  /** A digit begins a sentence at the outline; letters only while an edge is drawn. */
  private boolean mayBegin(String c) {
    Desk desk = board.desk();
    boolean isDrawing = desk.draft().isPresent();
    if (Character.isDigit(c.charAt(0))) {
      return isDrawing || desk.sight().step() == Step.OUTLINE;
    }
    return isDrawing && Character.isLetter(c.charAt(0));
  }

  private void pressed(KeyEvent e) {
    switch (e.getCode()) {
      case ENTER -> {
        board.change(
            d ->
                Drafting.enter(
                    d, LiveMarks.said(d, board.vocabulary()), board.say("window.slab.name")));
        e.consume();
      }
      case BACK_SPACE -> {
        backspace();
        e.consume();
      }
      case ESCAPE -> {
        escape();
        e.consume();
      }
      case DELETE -> {
        board.change(d -> TakeOut.picked(d, board.words()));
        e.consume();
      }
      case LEFT -> nudge(e, new Point(-1, 0));
      case RIGHT -> nudge(e, new Point(1, 0));
      case UP -> nudge(e, new Point(0, 1));
      case DOWN -> nudge(e, new Point(0, -1));
      default -> {}
    }
  }

  /** With Shift a foot, or a tenth of a metre, at once. */
  private void nudge(KeyEvent e, Point way) {
    int steps = e.isShiftDown() ? (board.desk().plan().unit().isMetric() ? 10 : 12) : 1;
    board.change(d -> Nudge.by(d, way, steps));
    e.consume();
  }

  private void backspace() {
    String typed = sentence();
    if (typed.isEmpty()) {
      board.change(Drafting::back);
    } else {
      board.change(d -> Drafting.type(d, typed.substring(0, typed.length() - 1)));
    }
  }

  private void escape() {
    hand.drop();
    board.change(
        d -> {
          if (d.notice().isPresent()) {
            return d.untold();
          }
          return d.draft().isPresent() ? Drafting.back(d) : d.letGo().picking(Pick.NOTHING);
        });
  }
}
