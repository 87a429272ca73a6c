package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jointwright.designer.canvas.Theme;
import org.jointwright.designer.facts.FindingFacts;
import org.jointwright.designer.state.Desk;

/** The findings, worst first; a click goes there. */
final class FindingsPane extends VBox {
  private final Board board;
  private final Theme theme;
  private List<FindingFacts> shown = List.of();

  FindingsPane(Board board, Theme theme) {
    this.board = board;
    this.theme = theme;
    getStyleClass().add("findings");
    setId("findings");
    board.watch(this::show);
  }

  private void show(Desk desk) {
    List<FindingFacts> now = FindingFacts.all(desk, board.words());
    boolean isJudged = desk.laying().laid().isPresent() && !desk.plan().slabs().isEmpty();
    setVisible(isJudged);
    setManaged(isJudged);
    if (now.equals(shown) && !getChildren().isEmpty()) {
      return;
    }
    shown = now;
    List<Node> all = new ArrayList<>();
    Region rule = new Region();
    rule.getStyleClass().add("rule");
    all.add(rule);
    all.add(head(now));
    now.forEach(f -> all.add(row(f)));
    getChildren().setAll(all);
  }

  private Node head(List<FindingFacts> now) {
    Label title = new Label(board.say("window.finding.title"));
    title.getStyleClass().add("section");
    String summary =
        now.isEmpty() ? board.say("window.finding.none") : FindingFacts.summary(now, board.words());
    Label count = new Label(summary);
    count.setId("findings-count");
    count.getStyleClass().add("quiet-label");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(8, title, gap, count);
    head.setAlignment(Pos.BASELINE_LEFT);
    return head;
  }

  private Node row(FindingFacts f) {
    Label text = new Label(f.text());
    text.getStyleClass().add("body");
    text.setWrapText(true);
    text.setMinHeight(Region.USE_PREF_SIZE);
    Label source = new Label(f.source());
    source.getStyleClass().add("source");
    source.setWrapText(true);
    source.setMinHeight(Region.USE_PREF_SIZE);
    VBox words = new VBox(2, text, source);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    FlagIcon flag = new FlagIcon(Integer.toString(f.number()), f.severity(), theme);
    return new PressedRow("finding-" + f.number(), f.text(), () -> goTo(f.number()), flag, words);
  }

  private void goTo(int number) {
    board.change(d -> FindingFacts.goTo(d, number));
  }
}
