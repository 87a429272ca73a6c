package org.jointwright.designer.pane;

import java.util.OptionalInt;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.canvas.Lato;
import org.jointwright.designer.facts.HeadFacts;
import org.jointwright.designer.node.Popups;
import org.jointwright.designer.print.PrintCard;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Outside;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.text.Words;

/** The whole window: bar above, path left, plan in the middle, facts right. */
public final class WindowPane extends BorderPane {
  private static final double WIDE = 1920;
  private static final double NARROW = 1100;

  /** What the scale bar takes of the paper's width, its figures with it. */
  private static final double SCALE_BAR = 190;

  /** A hint with less room than that would be a column of single words. */
  private static final double LEAST_HINT = 220;

  /** What the first steps take beside the scale. */
  private static final double LEAST_FIRST = 400;

  private final Board board;
  private final PathPane path;
  private final ScrollPane side;
  private final RowHeld held;
  private final PlanPane plan;
  private final Label step = new Label();
  private final Label fact = new Label();
  private final Label hint = new Label();
  private Pick picked = Pick.NOTHING;
  private Step at = Step.OUTLINE;
  private OptionalInt finding = OptionalInt.empty();

  /** The window on {@code board}. */
  public WindowPane(Board board, JobWork job, Brush brush) {
    this.board = board;
    Lato.load();
    getStyleClass().add("window");
    setStyle(brush.theme().styles());
    getStylesheets()
        .add(WindowPane.class.getResource("/org/jointwright/designer/window.css").toExternalForm());
    getStylesheets().addAll(Popups.styles(brush.times()));
    path = new PathPane(board, brush);
    plan = new PlanPane(board, brush);
    PlanHand hand = new PlanHand(board, plan);
    FactsPane facts = new FactsPane(board, job, plan::requestFocus);
    new PlanKeys(board, plan, hand, facts::type);
    new PlanMenu(board, plan, job);
    VBox right =
        new VBox(
            16,
            facts,
            new ThingsPane(board),
            new LayoutsPane(board, brush, this::hold),
            new FindingsPane(board, brush));
    right.getStyleClass().add("side");
    side = new ScrollPane(right);
    side.setFitToWidth(true);
    side.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    side.getStyleClass().add("side-scroll");
    side.setId("side");
    held = new RowHeld(side);
    setTop(new TopBar(board, new Menus(board, job).bar()));
    setLeft(path);
    setCenter(middle(job));
    setRight(side);
    new Dropping(job, plan).on(this);
    widthProperty().addListener((o, was, is) -> share(is.doubleValue()));
    share(1280);
    addEventHandler(KeyEvent.KEY_PRESSED, this::stepBack);
    board.watch(this::show);
  }

  /** Wherever the hand is: a notice goes first, and then the hand goes back to the paper. */
  private void stepBack(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      if (board.desk().notice().isPresent()) {
        board.change(Desk::untold);
      } else {
        plan.requestFocus();
      }
      e.consume();
    }
  }

  private StackPane middle(JobWork job) {
    step.getStyleClass().add("plan-head");
    step.setId("plan-head");
    fact.getStyleClass().add("plan-fact");
    hint.getStyleClass().add("hint");
    VBox head = new VBox(2, step, fact);
    head.getStyleClass().add("over-plan");
    head.setMouseTransparent(true);
    StackPane.setAlignment(hint, javafx.geometry.Pos.BOTTOM_RIGHT);
    hint.setWrapText(true);
    hint.setAlignment(javafx.geometry.Pos.BOTTOM_RIGHT);
    hint.setTextAlignment(javafx.scene.text.TextAlignment.RIGHT);
    hint.setMinHeight(Region.USE_PREF_SIZE);
    hint.setMouseTransparent(true);
    FirstSteps first = new FirstSteps(board, job);
    StackPane.setAlignment(first, javafx.geometry.Pos.BOTTOM_RIGHT);
    Busy busy = new Busy(board, job);
    StackPane.setAlignment(busy, javafx.geometry.Pos.TOP_CENTER);
    plan.onStop(busy::stop);
    StackPane middle =
        new StackPane(
            plan, head, hint, first, busy, new NoticePane(board, job, plan::requestFocus));
    middle.setMinSize(0, 0);
    job.whenPrinting(p -> ask(p, middle, job));
    // Left of it stands the scale bar.
    hint.maxWidthProperty().bind(middle.widthProperty().subtract(SCALE_BAR));
    first.shorten(middle.widthProperty().lessThan(SCALE_BAR + LEAST_FIRST));
    hint.visibleProperty()
        .bind(
            hint.textProperty()
                .isNotEmpty()
                .and(middle.widthProperty().greaterThan(SCALE_BAR + LEAST_HINT)));
    VBox.setVgrow(middle, Priority.ALWAYS);
    return middle;
  }

  /** A card over the plan that asks what to print; only one at a time. */
  private void ask(Outside.Printout printout, StackPane over, JobWork job) {
    Runnable close =
        () -> {
          over.getChildren().removeIf(PrintCard.class::isInstance);
          plan.requestFocus();
        };
    close.run();
    PrintCard.Deeds deeds =
        new PrintCard.Deeds(
            order -> {
              close.run();
              job.print(order);
            },
            paper -> {
              close.run();
              job.printOn(paper);
            },
            () -> {
              close.run();
              job.sheets();
            },
            close);
    Words words = board.words();
    String paper = board.desk().papers().setup().paper(words.units());
    PrintCard card = new PrintCard(words, printout.pages(), paper, printout.printers(), deeds);
    StackPane.setAlignment(card, javafx.geometry.Pos.TOP_CENTER);
    over.getChildren().add(card);
    card.begin();
  }

  /** The widths of the panes: look as it is meant at 1280 and 1920, in between by share. */
  private void share(double width) {
    boolean isNarrow = width < NARROW;
    double t = Math.clamp((width - 1280) / (WIDE - 1280), 0, 1);
    double left = isNarrow ? 92 : 216 + 24 * t;
    double right = isNarrow ? 290 : 320 + 80 * t;
    path.setNarrow(isNarrow);
    path.setMinWidth(left);
    path.setMaxWidth(left);
    path.setPrefWidth(left);
    side.setMinWidth(right);
    side.setMaxWidth(right);
    side.setPrefWidth(right);
  }

  private void hold(String row) {
    held.hold(row);
  }

  private void show(Desk desk) {
    HeadFacts head = HeadFacts.of(desk, board.words());
    step.setText(head.step());
    fact.setText(head.fact());
    hint.setText(Hints.of(desk, board));
    boolean isElsewhere = desk.sight().step() != at;
    at = desk.sight().step();
    boolean isGoneTo = !desk.sight().finding().equals(finding);
    if (isGoneTo) {
      finding = desk.sight().finding();
      finding.ifPresentOrElse(n -> held.hold("#finding-" + n), held::letGo);
    } else if (isElsewhere) {
      held.letGo();
    }
    fact.setVisible(!fact.getText().isEmpty());
    boolean isOther = !desk.picked().equals(picked);
    picked = desk.picked();
    // Its facts stand at the top; whoever read findings before would see nothing of them.
    boolean isRead = finding.isPresent() && (isGoneTo || !isElsewhere);
    if ((isOther || isElsewhere) && !isRead) {
      side.setVvalue(side.getVmin());
    }
  }

  /** Takes no more part: another pane takes its place. */
  public void close() {
    plan.close();
  }

  /** The paper. */
  public PlanPane plan() {
    return plan;
  }
}
