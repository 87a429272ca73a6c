package org.jointwright.designer.pane;

import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import org.jointwright.designer.canvas.BrokenPanels;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.canvas.Painter;
import org.jointwright.designer.canvas.PhotoPaint;
import org.jointwright.designer.canvas.PlanMarks;
import org.jointwright.designer.canvas.Theme;
import org.jointwright.designer.state.Desk;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Point;

/**
 * The paper: the plan on one canvas, what is live on another above it, both as large as the pane.
 * Painted at most once a pulse, the plan only when it or how it lies has changed.
 */
public final class PlanPane extends Region {
  private final Canvas plan = new Canvas();
  private final Canvas live = new Canvas();
  private final Board board;
  private final Theme theme;
  private final PhotoPaint beneath = new PhotoPaint();
  private Optional<Desk> painted = Optional.empty();
  private boolean isStale = true;

  /** The paper of {@code board}'s desk. */
  public PlanPane(Board board, Theme theme) {
    this.board = board;
    this.theme = theme;
    getStyleClass().add("plan");
    setId("plan");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleRoleDescription(board.say("window.plan.role"));
    live.setMouseTransparent(true);
    plan.setMouseTransparent(true);
    getChildren().addAll(plan, live);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    focusVisibleProperty().addListener((o, was, is) -> isStale = true);
    board.watch(d -> changed());
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        if (isStale) {
          paint();
        }
      }
    }.start();
  }

  /** The point of the plan at a place on the paper. */
  Point onPlan(double x, double y) {
    return board.desk().viewport().toPlan(new Point(x, y));
  }

  private void changed() {
    isStale = true;
    setAccessibleText(PlanSpoken.of(board.desk(), board));
  }

  @Override
  protected void layoutChildren() {
    double w = Math.ceil(getWidth());
    double h = Math.ceil(getHeight());
    if (w < 1 || h < 1) {
      return;
    }
    if (w != plan.getWidth() || h != plan.getHeight()) {
      for (Canvas c : new Canvas[] {plan, live}) {
        c.setWidth(w);
        c.setHeight(h);
      }
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
      GraphicsContext pen = plan.getGraphicsContext2D();
      pen.setFill(theme.color(Role.PAPER));
      pen.fillRect(0, 0, plan.getWidth(), plan.getHeight());
      Painter painter = painter(pen);
      if (desk.plan().photo().isPresent()) {
        beneath.paint(pen, desk.plan().photo().get(), desk.viewport());
        painter.panels(PhotoPaint.PANELS);
      }
      painter.paint(PlanMarks.plan(desk));
      painter.wash(BrokenPanels.of(desk), BrokenPanels.STRENGTH);
      painter.paint(PlanMarks.picked(desk));
      painter.paint(PlanMarks.writing(desk, board.words()));
      painted = Optional.of(desk);
    }
    GraphicsContext pen = live.getGraphicsContext2D();
    pen.clearRect(0, 0, live.getWidth(), live.getHeight());
    painter(pen).paint(LiveMarks.of(desk, board.words(), board.vocabulary()));
    if (isFocusVisible()) {
      pen.setStroke(theme.color(Role.SELECTED));
      pen.setLineDashes();
      pen.setLineWidth(2);
      pen.strokeRect(5, 5, live.getWidth() - 10, live.getHeight() - 10);
    }
  }

  private Painter painter(GraphicsContext pen) {
    return new Painter(pen, theme, plan.getWidth(), plan.getHeight());
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
