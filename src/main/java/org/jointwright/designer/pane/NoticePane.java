package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jointwright.designer.node.Flowing;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;

/** What the user is being told, on a card over the plan that any key or button puts away. */
final class NoticePane extends StackPane {
  private static final PseudoClass TROUBLE = PseudoClass.getPseudoClass("trouble");

  /** How far below the top of the paper the card hangs at most, and what is free round it. */
  private static final double TOP = 90;

  private static final double RIM = 12;

  /** More lines than this scroll. */
  private static final int MOST_LINES = 6;

  private final Board board;
  private final JobWork job;
  private final Runnable after;
  private final VBox card = new VBox(10);
  private Optional<Notice> shown = Optional.empty();

  /**
   * @param after what is done once a notice is put away: the hand goes back to the paper
   */
  NoticePane(Board board, JobWork job, Runnable after) {
    this.board = board;
    this.after = after;
    this.job = job;
    setPickOnBounds(false);
    setAlignment(Pos.TOP_CENTER);
    card.getStyleClass().add("notice");
    card.setId("notice");
    card.setMaxWidth(520);
    card.setMaxHeight(Region.USE_PREF_SIZE);
    getChildren().add(card);
    board.watch(this::show);
  }

  /** The card hangs a little below the top, higher where it is as high as the window. */
  @Override
  protected void layoutChildren() {
    double wide = Math.min(card.getMaxWidth(), getWidth() - 2 * RIM);
    double high = Math.min(card.prefHeight(wide), getHeight() - 2 * RIM);
    double top = Math.clamp((getHeight() - high) / 2, RIM, TOP);
    card.resizeRelocate((getWidth() - wide) / 2, top, wide, high);
  }

  // The same words told anew are another notice, and the hand goes to it once more.
  @SuppressWarnings("ReferenceEquality")
  private void show(Desk desk) {
    if (desk.notice().orElse(null) == shown.orElse(null) && !card.getChildren().isEmpty()) {
      return;
    }
    boolean isPutAway = shown.isPresent() && desk.notice().isEmpty();
    shown = desk.notice();
    setVisible(shown.isPresent());
    if (isPutAway) {
      after.run();
    }
    card.getChildren().clear();
    shown.ifPresent(this::fill);
  }

  private void fill(Notice notice) {
    card.pseudoClassStateChanged(TROUBLE, notice.isTrouble());
    card.getChildren()
        .add(styled(board.say(notice.key() + ".title", notice.arguments().toArray()), "section"));
    card.getChildren().add(styled(board.say(notice.key(), notice.arguments().toArray()), "body"));
    if (!notice.lines().isEmpty()) {
      VBox lines = new VBox(8);
      notice.lines().forEach(l -> lines.getChildren().add(styled(l, "body")));
      lines.setId("notice-lines");
      card.getChildren().add(notice.lines().size() > MOST_LINES ? scrolling(lines) : lines);
    }
    List<Button> buttons = new ArrayList<>();
    notice
        .next()
        .ifPresent(
            next -> {
              if (next.kind() == Notice.Next.Kind.OVER_SHEETS) {
                buttons.add(button("over", () -> job.overSheets(next, notice.lines())));
              } else if (notice.isHalfDrawn()) {
                buttons.add(button("leave", () -> job.dropOutline(next)));
              } else {
                buttons.add(button("keep", () -> job.keepThen(next)));
                buttons.add(button("leave", () -> job.proceed(next)));
              }
            });
    notice.shows().ifPresent(f -> buttons.add(button("show", () -> job.show(f))));
    buttons.add(
        button(notice.next().isPresent() ? "stay" : "putAway", () -> board.change(Desk::untold)));
    Flowing row = new Flowing(10, 8);
    buttons.forEach(row::add);
    card.getChildren().add(row);
    // A second Enter of the dialog before must not write over anything.
    boolean isOver =
        notice.next().filter(n -> n.kind() == Notice.Next.Kind.OVER_SHEETS).isPresent();
    Button first = isOver ? buttons.getLast() : buttons.getFirst();
    speak(notice, first);
    javafx.application.Platform.runLater(first::requestFocus);
  }

  /** The button that gets the focus reads the notice out, for nothing else would. */
  private void speak(Notice notice, Button first) {
    Object[] arguments = notice.arguments().toArray();
    String title = board.say(notice.key() + ".title", arguments);
    String lines = String.join(" ", notice.lines());
    first.setAccessibleText(
        board.say(
            "window.notice.spoken",
            title,
            (board.say(notice.key(), arguments) + " " + lines).strip(),
            first.getText()));
  }

  private static ScrollPane scrolling(VBox lines) {
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    // As high as its lines are; where the window is lower the card shrinks it.
    scroll.prefHeightProperty().bind(lines.heightProperty().add(2));
    scroll.setMinHeight(120);
    return scroll;
  }

  private Button button(String name, Runnable action) {
    Button button = new Button(board.say("window.notice." + name));
    button.setId("notice-" + name);
    button.setOnAction(e -> action.run());
    return button;
  }

  private static Label styled(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
