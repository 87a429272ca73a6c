package org.jointwright.designer.pane;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyEvent;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.hand.Arrows;
import org.jointwright.designer.hand.Walk;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Typing;
import org.jointwright.designer.sketch.Typing.Motion;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;
import org.jointwright.shape.Point;

/** What keys do while the paper has the focus: the typed sentence, Enter, Esc, arrows, Delete. */
final class PlanKeys {
  private final Board board;
  private final PlanPane paper;
  private final PlanHand hand;
  private final Predicate<String> toFacts;

  /**
   * The keys of the paper.
   *
   * @param toFacts begins to type the first fact anew, or says that there is none
   */
  PlanKeys(Board board, PlanPane paper, PlanHand hand, Predicate<String> toFacts) {
    this.toFacts = toFacts;
    this.board = board;
    this.paper = paper;
    this.hand = hand;
    paper.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    paper.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
  }

  private Typing sentence() {
    return board.desk().draft().map(Draft::typing).orElse(Typing.NONE);
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
    if (Character.isDigit(c.charAt(0)) && board.desk().hand().waiting().isPresent()) {
      if (toFacts.test(c)) {
        e.consume();
      }
      return;
    }
    if (isPlaceTyped(c) && toFacts.test(c)) {
      e.consume();
      return;
    }
    if (isMarkTyped(c)) {
      hand.drop();
      board.change(Desk::letGo);
      if (toFacts.test(c)) {
        e.consume();
      }
      return;
    }
    boolean begins = sentence().cut().text().isEmpty();
    if (begins && !mayBegin(c)) {
      return;
    }
    board.change(d -> Drafting.typing(d, t -> t.put(c)));
    e.consume();
  }

  /** A digit typed before a line has its first end says where on a side that is. */
  private boolean isPlaceTyped(String c) {
    return Character.isDigit(c.charAt(0))
        && board
            .desk()
            .draft()
            .filter(d -> d.what().isLine() && d.what() != Drawn.STRIP && d.last().isEmpty())
            .isPresent();
  }

  /**
   * A digit typed while a joint is picked, or under the hand, is its mark; typed while a photo is
   * scaled, it is how far its two places are apart.
   */
  private boolean isMarkTyped(String c) {
    Desk desk = board.desk();
    return Character.isDigit(c.charAt(0))
        && desk.draft().isEmpty()
        && (desk.picked() instanceof Pick.Scaling
            || (desk.sight().step() == Step.JOINTS && desk.picked() instanceof Pick.AtJoint));
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
    if (board.desk().draft().isPresent() && isEdited(e)) {
      e.consume();
      return;
    }
    switch (e.getCode()) {
      case ENTER -> {
        board.change(this::entered);
        e.consume();
      }
      case BACK_SPACE -> {
        board.change(Drafting::back);
        e.consume();
      }
      case ESCAPE -> {
        escape();
        e.consume();
      }
      case DELETE -> {
        board.change(d -> FactsOf.takenOut(d, board.words()));
        e.consume();
      }
      case A -> {
        if (e.isShortcutDown()) {
          board.change(PlanKeys::all);
          e.consume();
        }
      }
      case PAGE_DOWN -> walk(e, true);
      case PAGE_UP -> walk(e, false);
      case LEFT -> nudge(e, new Point(-1, 0));
      case RIGHT -> nudge(e, new Point(1, 0));
      case UP -> nudge(e, new Point(0, 1));
      case DOWN -> nudge(e, new Point(0, -1));
      default -> {}
    }
  }

  /** Whether a key is one of those that edit a text, as in any field; it is done then. */
  private boolean isEdited(KeyEvent e) {
    boolean isEmpty = sentence().text().isEmpty();
    if (e.isShortcutDown()) {
      switch (e.getCode()) {
        case A -> edit(Typing::all);
        case V -> paste();
        case C -> copy();
        case X -> {
          copy();
          edit(Typing::cut);
        }
        default -> {
          return !isEmpty && isLed(e, true);
        }
      }
      return true;
    }
    return !isEmpty && isLed(e, false);
  }

  /** Whether the key leads the caret, or takes out what is on its way. */
  private boolean isLed(KeyEvent e, boolean byWords) {
    Motion back = byWords ? Motion.WORD_BACK : Motion.BACK;
    Motion on = byWords ? Motion.WORD_ON : Motion.ON;
    switch (e.getCode()) {
      case LEFT -> lead(back, e);
      case RIGHT -> lead(on, e);
      case HOME, UP -> lead(Motion.START, e);
      case END, DOWN -> lead(Motion.END, e);
      case BACK_SPACE -> edit(t -> t.without(back));
      case DELETE -> edit(t -> t.without(on));
      default -> {
        return false;
      }
    }
    return true;
  }

  private void lead(Motion motion, KeyEvent e) {
    edit(t -> t.moved(motion, e.isShiftDown()));
  }

  private void edit(UnaryOperator<Typing> how) {
    board.change(d -> Drafting.typing(d, how));
  }

  private void copy() {
    String picked = sentence().picked();
    if (!picked.isEmpty()) {
      ClipboardContent content = new ClipboardContent();
      content.putString(picked);
      Clipboard.getSystemClipboard().setContent(content);
    }
  }

  /** A line break would end the sentence: what was copied is put on one line. */
  private void paste() {
    Optional.ofNullable(Clipboard.getSystemClipboard().getString())
        .map(t -> t.strip().replaceAll("[\\s\\p{Cntrl}]+", " "))
        .filter(t -> !t.isEmpty())
        .ifPresent(text -> edit(t -> t.put(text)));
  }

  private Desk entered(Desk d) {
    String name = board.say("window.slab.name");
    if (d.hand().waiting().isPresent()) {
      return SetDown.place(d, name);
    }
    boolean isBlank = d.plan().slabs().isEmpty();
    return d.draft().isEmpty() && !isBlank
        ? Walk.entered(d)
        : Drafting.enter(d, LiveMarks.said(d, board.vocabulary()), name);
  }

  /** All slabs with what is in them, and the old joints. */
  private static Desk all(Desk d) {
    boolean isIdle = d.draft().isEmpty() && d.hand().hold().isEmpty();
    return isIdle && d.sight().step() == Step.OUTLINE
        ? d.picking(
            Things.pick(
                Things.all(d.plan()).stream().filter(t -> t.within(d.plan()).isEmpty()).toList()))
        : d;
  }

  /**
   * To the next finding where there are any at the joints; to the next thing else, or by Shift; by
   * Ctrl to the next whole one.
   */
  private void walk(KeyEvent e, boolean forward) {
    boolean isThing = e.isShiftDown();
    if (e.isShortcutDown()) {
      board.change(d -> Walk.onWhole(d, forward));
      e.consume();
      return;
    }
    board.change(
        d -> !isThing && areFindings(d) ? FindingFacts.step(d, forward) : Walk.on(d, forward));
    e.consume();
  }

  private static boolean areFindings(Desk d) {
    return d.sight().step() == Step.JOINTS
        && d.draft().isEmpty()
        && d.hand().hold().isEmpty()
        && d.laying().laid().filter(l -> !l.findings().isEmpty()).isPresent();
  }

  /** With Shift a foot, or a tenth of a metre, at once; with Alt a sixteenth, or a millimetre. */
  private void nudge(KeyEvent e, Point way) {
    boolean isMetric = board.desk().plan().unit().isMetric();
    double many = isMetric ? 10 : 12;
    double few = isMetric ? 0.1 : 1.0 / 16;
    double steps = e.isShiftDown() ? many : e.isAltDown() ? few : 1;
    board.change(d -> Arrows.pressed(d, way, steps));
    e.consume();
  }

  private void escape() {
    boolean wasDragging = hand.drop();
    boolean isDrawing = board.desk().draft().isPresent() || board.desk().notice().isPresent();
    if (!wasDragging && !isDrawing && paper.stopped()) {
      return;
    }
    board.change(
        d -> {
          if (wasDragging && d.hand().isMoving()) {
            // The drag is one step, and is taken back as one.
            return d.undone();
          }
          if (d.notice().isPresent()) {
            return d.untold();
          }
          if (d.hand().addition().isPresent()) {
            // The slab that it was for is still picked.
            return d.putAway();
          }
          return d.draft().isPresent() ? Drafting.back(d) : d.putAway().picking(Pick.NOTHING);
        });
  }
}
