package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.findings.FixFacts;
import org.jointwright.designer.node.FlagIcon;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Sight;
import org.jointwright.text.Units;

/**
 * The findings, worst first; a click goes there and shows what can be done about it. A long list is
 * made a part at a time: the toolkit goes through every row that is there for each picture of the
 * window, in sight or not.
 */
final class FindingsPane extends VBox {
  /** Fixes stand under the finding's words, right of its flag. */
  private static final Insets UNDER = new Insets(2, 0, 0, 45);

  /** So many rows are made at a time. */
  static final int PART = 40;

  private final Board board;
  private final Brush brush;
  private List<FindingFacts> shown = List.of();
  private final List<VBox> fixes = new ArrayList<>();
  private final List<Label> more = new ArrayList<>();
  private Optional<FixFacts> offered = Optional.empty();

  FindingsPane(Board board, Brush brush) {
    this.board = board;
    this.brush = brush;
    getStyleClass().add("findings");
    setId("findings");
    // Before the list is scrolled by the same keys.
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    board.watch(this::show);
  }

  private void show(Desk desk) {
    List<FindingFacts> now = FindingFacts.all(desk, board.words());
    boolean isJudged = desk.laying().laid().isPresent() && !desk.plan().slabs().isEmpty();
    setVisible(isJudged);
    setManaged(isJudged);
    Optional<FixFacts> offer = FixFacts.of(desk, board.words());
    boolean isSame = now.equals(shown) && !getChildren().isEmpty();
    if (!isSame) {
      shown = now;
      fixes.clear();
      more.clear();
      Region rule = new Region();
      rule.getStyleClass().add("rule");
      getChildren().setAll(rule, head(now));
      list(PART);
    }
    int goneTo = Math.min(desk.sight().finding().orElse(0), shown.size());
    boolean isListed = goneTo <= fixes.size();
    if (!isListed) {
      list(goneTo);
    }
    if (!isSame || !isListed || !offer.equals(offered)) {
      offered = offer;
      showFixes();
    }
    ask(desk);
  }

  /** What each finding that is not open asks: what is known of it changes with each answer. */
  private void ask(Desk desk) {
    for (int i = 0; i < fixes.size(); i++) {
      more.get(i).setText(FixFacts.asking(desk, i + 1, board.words()));
    }
  }

  /** Makes rows in whole parts until there are so many, or all; a row for those that are left. */
  private void list(int least) {
    List<Node> rows = new ArrayList<>(getChildren());
    rows.removeIf(n -> n instanceof PressedRow);
    int until = Math.min(shown.size(), (least + PART - 1) / PART * PART);
    for (int i = fixes.size(); i < until; i++) {
      VBox under = new VBox(2);
      fixes.add(under);
      rows.add(new VBox(row(shown.get(i)), under));
    }
    if (until < shown.size()) {
      String left = board.say("window.finding.rest", shown.size() - until);
      PressedRow next =
          new PressedRow("findings-rest", left, () -> goOn(until), wrapped(left, "link"));
      rows.add(next);
    }
    getChildren().setAll(rows);
  }

  /** Lists the next part; the keys go on with its first. */
  private void goOn(int from) {
    list(from + PART);
    showFixes();
    ask(board.desk());
    Optional.ofNullable(lookup("#finding-" + (from + 1))).ifPresent(Node::requestFocus);
  }

  /** Puts the fixes under the finding that was gone to, and nothing under the others. */
  private void showFixes() {
    for (int i = 0; i < fixes.size(); i++) {
      int number = i + 1;
      boolean isOpen = offered.filter(o -> o.finding() == number).isPresent();
      boolean isMore = !isOpen && shown.get(i).hasMore();
      more.get(i).setVisible(isMore);
      more.get(i).setManaged(isMore);
      fixes
          .get(i)
          .getChildren()
          .setAll(offered.filter(o -> o.finding() == number).map(this::rows).orElse(List.of()));
    }
  }

  private List<Node> rows(FixFacts offer) {
    if (offer.texts().isEmpty()) {
      String why = offer.known() ? "window.fix.none" : "window.fix.looking";
      Label quiet = wrapped(board.say(why), "source");
      quiet.setId("fix-none");
      VBox.setMargin(quiet, UNDER);
      return offer.known() ? goingOn(offer, quiet) : List.of(quiet);
    }
    List<Node> rows = new ArrayList<>();
    for (int i = 0; i < offer.texts().size(); i++) {
      int index = i;
      String text = offer.texts().get(i);
      PressedRow row =
          linked(
              "fix-" + (i + 1),
              board.say("window.fix.spoken", text),
              () -> board.change(d -> FixFacts.done(d, offer.finding(), index)),
              text);
      row.whenRestedOn(is -> glance(is, new Sight.Glance(offer.finding(), OptionalInt.of(index))));
      rows.add(row);
    }
    return rows;
  }

  /** What a finding that no fix clears comes to if it stays, and what to go on with. */
  private List<Node> goingOn(FixFacts offer, Label none) {
    List<Node> rows = new ArrayList<>(List.of(none));
    offer
        .left()
        .ifPresent(
            text -> {
              Label left = wrapped(text, "source");
              left.setId("fix-left");
              VBox.setMargin(left, UNDER);
              rows.add(left);
            });
    for (int i = 0; i < offer.steps().size(); i++) {
      int index = i;
      String text = offer.steps().get(i);
      rows.add(
          linked(
              "go-on-" + (i + 1),
              text,
              () -> board.change(d -> FixFacts.goneOn(d, offer.finding(), index, board.words())),
              text));
    }
    return rows;
  }

  /** A row under a finding that is pressed as a link. */
  private static PressedRow linked(String id, String spoken, Runnable action, String text) {
    Label label = wrapped(text, "link");
    HBox.setHgrow(label, Priority.ALWAYS);
    PressedRow row = new PressedRow(id, spoken, action, label);
    VBox.setMargin(row, UNDER);
    return row;
  }

  private static Label wrapped(String text, String style) {
    Label label = new Label(Units.bound(text));
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.setMinWidth(0);
    return label;
  }

  private Node head(List<FindingFacts> now) {
    Label title = new Label(board.say("window.finding.title"));
    title.getStyleClass().add("section");
    String summary =
        now.isEmpty() ? board.say("window.finding.none") : FindingFacts.summary(now, board.words());
    // No figure stays behind at the end of a line.
    Label count = new Label(summary.replaceAll("(?<=\\d) ", "\u00a0"));
    count.setId("findings-count");
    count.getStyleClass().add("quiet-label");
    // A long summary goes on below; neither loses its end.
    title.setMinWidth(Region.USE_PREF_SIZE);
    count.setWrapText(true);
    count.setMinHeight(Region.USE_PREF_SIZE);
    count.setAlignment(Pos.BASELINE_RIGHT);
    count.setTextAlignment(TextAlignment.RIGHT);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(8, title, gap, count);
    head.setAlignment(Pos.BASELINE_LEFT);
    return head;
  }

  private Node row(FindingFacts f) {
    // The whole row is pressed; the line only says that there is more to come.
    Label what = wrapped("", "link");
    what.setId("more-" + f.number());
    more.add(what);
    VBox words = new VBox(2, wrapped(f.text(), "body"), wrapped(f.source(), "source"), what);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    FlagIcon flag = new FlagIcon(Integer.toString(f.number()), f.severity(), brush);
    PressedRow row =
        new PressedRow("finding-" + f.number(), f.text(), () -> goTo(f.number()), flag, words);
    row.whenRestedOn(is -> glance(is, new Sight.Glance(f.number(), OptionalInt.empty())));
    return row;
  }

  /** Shows on the plan what the hand rests on, until it rests elsewhere. */
  private void glance(boolean isRested, Sight.Glance at) {
    Optional<Sight.Glance> now = board.desk().sight().glance();
    if (isRested) {
      board.change(d -> d.withSight(s -> s.glancingAt(Optional.of(at))));
    } else if (now.equals(Optional.of(at))) {
      board.change(d -> d.withSight(s -> s.glancingAt(Optional.empty())));
    }
  }

  private void pressed(KeyEvent e) {
    if (e.getCode() == KeyCode.PAGE_DOWN || e.getCode() == KeyCode.PAGE_UP) {
      board.change(d -> FindingFacts.step(d, e.getCode() == KeyCode.PAGE_DOWN));
      board
          .desk()
          .sight()
          .finding()
          .ifPresent(
              n -> Optional.ofNullable(lookup("#finding-" + n)).ifPresent(Node::requestFocus));
      e.consume();
    }
  }

  private void goTo(int number) {
    board.change(d -> FindingFacts.goTo(d, number));
  }
}
