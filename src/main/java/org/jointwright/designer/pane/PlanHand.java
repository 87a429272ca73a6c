package org.jointwright.designer.pane;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.hand.Gesture;
import org.jointwright.designer.hand.Gestures;
import org.jointwright.designer.hand.UnderPointer;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Sight;
import org.jointwright.shape.Point;

/** Turns what mouse and wheel do on the paper into gestures. */
final class PlanHand {
  /** A notch of the wheel. */
  private static final double NOTCH = 40;

  private static final double FACTOR = 1.15;

  private final Board board;
  private final PlanPane paper;
  private Optional<Gesture> gesture = Optional.empty();
  private List<Integer> rested = List.of();
  private boolean isSpaceDown;

  /** Whether the hand pressed in the sentence, and picks of it as it goes on. */
  private boolean isInSentence;

  PlanHand(Board board, PlanPane paper) {
    this.board = board;
    this.paper = paper;
    paper.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
    paper.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    paper.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    paper.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    paper.addEventHandler(MouseEvent.MOUSE_EXITED, e -> left());
    paper.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    paper.addEventHandler(ZoomEvent.ZOOM, this::pinched);
    paper.addEventHandler(KeyEvent.KEY_PRESSED, e -> space(e, true));
    paper.addEventHandler(KeyEvent.KEY_RELEASED, e -> space(e, false));
  }

  private Pointer pointer(MouseEvent e) {
    return Pointer.on(board.desk().viewport(), e.getX(), e.getY(), e.isAltDown());
  }

  /** The place in the sentence that is typed under the hand. */
  private OptionalInt inSentence(MouseEvent e, boolean anywhere) {
    Point at = new Point(e.getX(), e.getY());
    return LiveMarks.inSentence(board.desk(), board.words(), board.vocabulary(), at, anywhere);
  }

  /** On its way to a button the mouse crosses the paper: a place that was typed stays. */
  private boolean isLedByFigure() {
    return !paper.isFocused()
        && board.desk().draft().flatMap(Draft::pencil).filter(Pencil::isByKeys).isPresent();
  }

  private void moved(MouseEvent e) {
    boolean isText = inSentence(e, false).isPresent();
    if (isText || Cursor.TEXT.equals(paper.getCursor())) {
      paper.setCursor(isText ? Cursor.TEXT : Cursor.DEFAULT);
    }
    if (isText) {
      return;
    }
    if (isLedByFigure()) {
      return;
    }
    if (board.desk().draft().isPresent()) {
      board.change(d -> Drafting.lead(d, pointer(e)));
    } else if (board.desk().hand().waiting().isPresent()) {
      board.change(d -> SetDown.lead(d, pointer(e)));
    } else {
      List<Integer> flag = paper.flag(e.getX(), e.getY());
      flagged(flag);
      paper.tip(paper.said(flag), e.getX(), e.getY());
      point(flag.isEmpty() ? UnderPointer.of(board.desk(), pointer(e).plan()) : Pick.NOTHING);
      if (!flag.isEmpty()) {
        paper.setCursor(Cursor.HAND);
      }
    }
  }

  /** Shows the panels that a finding speaks of while the hand rests on its flag. */
  private void flagged(List<Integer> flag) {
    if (!flag.equals(rested)) {
      rested = flag;
      Optional<Sight.Glance> glance =
          flag.stream().findFirst().map(n -> new Sight.Glance(n, OptionalInt.empty()));
      board.change(d -> d.withSight(s -> s.glancingAt(glance)));
    }
  }

  private void left() {
    flagged(List.of());
    paper.tip(List.of(), 0, 0);
    point(Pick.NOTHING);
  }

  private void point(Pick pick) {
    if (!board.desk().sight().pointed().equals(pick)) {
      board.change(d -> d.withSight(s -> s.pointingAt(pick)));
    }
    paper.setCursor(board.desk().draft().isPresent() ? Cursor.DEFAULT : cursor(pick));
  }

  private static Cursor cursor(Pick pick) {
    return pick instanceof Pick.Nothing ? Cursor.DEFAULT : Cursor.HAND;
  }

  private void pressed(MouseEvent e) {
    paper.requestFocus();
    paper.tip(List.of(), 0, 0);
    Pointer at = pointer(e);
    Desk desk = board.desk();
    boolean isPushing = e.getButton() == MouseButton.MIDDLE || isSpaceDown;
    if (!isPushing && e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    OptionalInt place = isPushing ? OptionalInt.empty() : inSentence(e, false);
    if (place.isPresent()) {
      isInSentence = true;
      board.change(
          d ->
              Drafting.typing(
                  d,
                  t -> e.getClickCount() > 1 ? t.all() : t.led(place.getAsInt(), e.isShiftDown())));
      e.consume();
      return;
    }
    List<Integer> flag = isPushing || isDrawing(desk) ? List.of() : paper.flag(e.getX(), e.getY());
    if (!flag.isEmpty()) {
      board.change(d -> FindingFacts.through(d, flag));
      e.consume();
      return;
    }
    Gesture begun =
        isPushing
            ? Gestures.movePaper(desk, at)
            : Gestures.begin(desk, at, board.say("window.slab.name"), e.isShiftDown());
    gesture = Optional.of(begun);
    board.change(d -> begun.press(d, at));
    e.consume();
  }

  private static boolean isDrawing(Desk desk) {
    return desk.draft().isPresent() || desk.hand().waiting().isPresent();
  }

  private void dragged(MouseEvent e) {
    if (isInSentence && e.getClickCount() < 2) {
      inSentence(e, true)
          .ifPresent(i -> board.change(d -> Drafting.typing(d, t -> t.led(i, true))));
    }
    gesture.ifPresent(g -> board.change(d -> g.drag(d, pointer(e))));
  }

  private void released(MouseEvent e) {
    gesture.ifPresent(g -> board.change(d -> g.release(d, pointer(e))));
    gesture = Optional.empty();
    isInSentence = false;
  }

  private void scrolled(ScrollEvent e) {
    if (e.getDeltaY() == 0) {
      return;
    }
    double factor = Math.pow(FACTOR, e.getDeltaY() / NOTCH);
    Point about = new Point(e.getX(), e.getY());
    board.change(d -> d.withSight(s -> s.with(s.viewport().zoomed(about, factor), false)));
    e.consume();
  }

  private void pinched(ZoomEvent e) {
    Point about = new Point(e.getX(), e.getY());
    board.change(
        d -> d.withSight(s -> s.with(s.viewport().zoomed(about, e.getZoomFactor()), false)));
    e.consume();
  }

  private void space(KeyEvent e, boolean down) {
    boolean isTyping = board.desk().draft().filter(d -> !d.typed().isEmpty()).isPresent();
    if (e.getCode() == KeyCode.SPACE && !isTyping) {
      isSpaceDown = down;
    }
  }

  /** Puts down what is being dragged, where it is; whether anything was. */
  boolean drop() {
    boolean was = gesture.isPresent();
    gesture = Optional.empty();
    return was;
  }
}
