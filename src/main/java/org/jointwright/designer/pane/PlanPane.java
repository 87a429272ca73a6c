package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import org.jointwright.designer.canvas.Amiss;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.canvas.FlagMarks;
import org.jointwright.designer.canvas.HoldMarks;
import org.jointwright.designer.canvas.Known;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.canvas.Painter;
import org.jointwright.designer.canvas.PhotoPaint;
import org.jointwright.designer.canvas.PlanMarks;
import org.jointwright.designer.canvas.Writing;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.node.Tip;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/**
 * The paper: the plan on one canvas, what is live on another above it, both as large as the pane.
 * Painted at most once a pulse, the plan only when it or how it lies has changed.
 */
public final class PlanPane extends Region {
  private final Canvas plan = new Canvas();
  private final Canvas live = new Canvas();
  private final Tip tip = new Tip();
  private final Board board;
  private final AnimationTimer pulse;
  private final PhotoPaint beneath = new PhotoPaint();
  private final Brush brush;
  private Optional<Desk> painted = Optional.empty();

  /** The desk that the tip speaks of. */
  private Optional<Desk> tipped = Optional.empty();

  private Optional<Known> known = Optional.empty();
  private Optional<FlagMarks> flags = Optional.empty();
  private Optional<Held> held = Optional.empty();
  private Optional<Writing> writing = Optional.empty();
  private boolean isStale = true;
  private BooleanSupplier stop = () -> false;

  /** The marks of what is picked or held on a desk, as long as it lies as it did. */
  private record Held(Desk desk, Words words, List<Mark> marks) {}

  /** The paper of {@code board}'s desk. */
  public PlanPane(Board board, Brush brush) {
    this.board = board;
    this.brush = brush;
    getStyleClass().add("plan");
    setId("plan");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleRoleDescription(board.say("window.plan.role"));
    live.setMouseTransparent(true);
    plan.setMouseTransparent(true);
    getChildren().addAll(plan, live, tip);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    focusVisibleProperty().addListener((o, was, is) -> isStale = true);
    board.watchAll(d -> isStale = true);
    board.watchAll(this::untip);
    board.watch(d -> setAccessibleText(PlanSpoken.of(d, board)));
    pulse =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            if (isStale) {
              paint();
            }
          }
        };
    pulse.start();
  }

  /** What Esc stops before it does anything else; it says whether there was anything to stop. */
  void onStop(BooleanSupplier value) {
    stop = value;
  }

  /** Stops what takes long; says whether there was anything to stop. */
  boolean stopped() {
    return stop.getAsBoolean();
  }

  /**
   * Says a few lines beside a place of the paper, until what is there changes; none say nothing.
   */
  void tip(List<String> lines, double x, double y) {
    tip.say(lines, x, y, getWidth(), getHeight());
    tipped = lines.isEmpty() ? Optional.empty() : Optional.of(board.desk());
  }

  /** A key may do what it will while the pointer rests: the tip would speak of what was there. */
  private void untip(Desk now) {
    if (tipped.filter(d -> !isSameBelow(d, now)).isPresent()) {
      tip(List.of(), 0, 0);
    }
  }

  /** The findings whose flag is at a place of the paper, by number; none at most places. */
  List<Integer> flag(double x, double y) {
    return flags(board.desk()).at(new Point(x, y));
  }

  /** What the findings say whose flag that is. */
  List<String> said(List<Integer> flag) {
    Desk desk = board.desk();
    return FindingFacts.lines(desk, flag, board.words(), p -> known(desk).numbering(p));
  }

  private Known known(Desk desk) {
    Known now = known.map(k -> k.or(desk)).orElseGet(() -> Known.of(desk));
    known = Optional.of(now);
    return now;
  }

  // The same words are told by their being the very same.
  @SuppressWarnings("ReferenceEquality")
  private List<Mark> held(Desk desk) {
    Words words = board.words();
    Held now =
        held.filter(h -> h.words() == words && h.desk().isSameButView(desk))
            .filter(h -> h.desk().viewport().equals(desk.viewport()))
            .orElseGet(
                () -> new Held(desk, words, HoldMarks.of(desk, known(desk), flags(desk), words)));
    held = Optional.of(now);
    return now.marks();
  }

  private FlagMarks flags(Desk desk) {
    FlagMarks now = flags.map(f -> f.or(desk)).orElseGet(() -> FlagMarks.of(desk));
    flags = Optional.of(now);
    return now;
  }

  /** The point of the plan at a place on the paper. */
  Point onPlan(double x, double y) {
    return board.desk().viewport().toPlan(new Point(x, y));
  }

  @Override
  protected void layoutChildren() {
    double w = Math.ceil(getWidth());
    double h = Math.ceil(getHeight());
    if (w < 1 || h < 1) {
      return;
    }
    Viewport now = board.desk().viewport();
    if (w != now.width() || h != now.height() || plan.getWidth() < 1) {
      brush.size(plan, w, h);
      brush.size(live, w, h);
      painted = Optional.empty();
      board.change(d -> d.resized(w, h));
      paint();
    }
  }

  /** Paints what is stale at once, for a picture of the window. */
  public void paint() {
    isStale = false;
    Desk desk = board.desk();
    if (plan.getWidth() < 1 || plan.getHeight() < 1) {
      return;
    }
    if (painted.filter(p -> isSameBelow(p, desk)).isEmpty()) {
      Painter painter = brush.painter(plan);
      painter.cover(Role.PAPER);
      if (desk.plan().photo().isPresent()) {
        beneath.paint(plan.getGraphicsContext2D(), desk.plan().photo().get(), desk.viewport());
        painter.panels(PhotoPaint.PANELS);
      }
      Known shown = known(desk);
      painter.paint(PlanMarks.plan(shown, desk));
      painter.wash(Amiss.panels(shown, desk.viewport()), Amiss.PANEL);
      painter.wash(Amiss.laps(shown, desk.viewport()), Amiss.LAP);
      painter.paint(PlanMarks.picked(desk));
      Writing now = Writing.of(shown, desk, flags(desk), held(desk), board.words());
      painter.paint(now.marks());
      writing = Optional.of(now);
      painted = Optional.of(desk);
    }
    paintAbove(desk);
  }

  private void paintAbove(Desk desk) {
    List<Mark> marks =
        new ArrayList<>(LiveMarks.of(desk, held(desk), board.words(), board.vocabulary()));
    writing.ifPresent(w -> marks.addAll(w.panelNames(desk)));
    if (isFocusVisible()) {
      Ring ring = Rings.box(5, 5, getWidth() - 10, getHeight() - 10);
      marks.add(Mark.Line.of(new Path(ring.edges()), 2, Role.SELECTED));
    }
    // A canvas takes its time with each picture even where nothing is on it.
    live.setVisible(!marks.isEmpty());
    if (live.isVisible()) {
      Painter above = brush.painter(live);
      above.wipe();
      above.paint(marks);
    }
  }

  /** Paints no more: another takes its place. */
  void close() {
    pulse.stop();
  }

  // The same history is the same plan; comparing whole plans at each pulse would be slow.
  @SuppressWarnings("ReferenceEquality")
  private static boolean isSameBelow(Desk a, Desk b) {
    return a.history() == b.history()
        && a.laying().laid().equals(b.laying().laid())
        && a.picked().equals(b.picked())
        && a.hand().hold().isPresent() == b.hand().hold().isPresent()
        && a.draft().isPresent() == b.draft().isPresent()
        && a.viewport().equals(b.viewport());
  }
}
