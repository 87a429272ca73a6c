package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jointwright.check.Severity;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.facts.StepFacts;
import org.jointwright.designer.node.FlagIcon;
import org.jointwright.designer.node.Squares;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Step;

/**
 * The path: a string line with a square for each step, a word, a fact, flags with the numbers of
 * the findings.
 */
final class PathPane extends VBox {
  /** Flags that are wider together have no room beside the word, and stand under it; pixels. */
  private static final double BESIDE = 75;

  private final Board board;
  private final Brush brush;
  private final List<Button> steps = new ArrayList<>();
  private final VBox foot = new VBox(12);
  private List<StepFacts> shown = List.of();
  private boolean isNarrow;

  PathPane(Board board, Brush brush) {
    this.board = board;
    this.brush = brush;
    getStyleClass().add("path");
    setId("path");
    for (Step step : Step.values()) {
      Button button = new Button();
      button.setId("step-" + step.name().toLowerCase(java.util.Locale.ROOT));
      button.getStyleClass().setAll("step");
      button.setMaxWidth(Double.MAX_VALUE);
      button.setOnAction(e -> board.change(d -> d.withStep(step)));
      steps.add(button);
    }
    getChildren().addAll(steps);
    Region rest = new Region();
    VBox.setVgrow(rest, Priority.ALWAYS);
    getChildren().addAll(rest, foot);
    if (!board.words().isChecked()) {
      Label note = new Label(board.say("window.language.note"));
      note.setId("language-note");
      note.getStyleClass().addAll("least", "note");
      note.setWrapText(true);
      note.setMinHeight(Region.USE_PREF_SIZE);
      foot.getChildren().add(note);
    }
    foot.getChildren().add(new PathLegend(board));
    board.watch(this::show);
  }

  /** Shows squares and counts only, where the window is narrow. */
  void setNarrow(boolean narrow) {
    if (narrow != isNarrow) {
      isNarrow = narrow;
      shown = List.of();
      foot.setVisible(!narrow);
      foot.setManaged(!narrow);
      show(board.desk());
    }
  }

  private void show(Desk desk) {
    List<StepFacts> facts = StepFacts.all(desk, board.words());
    for (int i = 0; i < facts.size(); i++) {
      boolean isHere = facts.get(i).step() == desk.sight().step();
      Button button = steps.get(i);
      boolean wasHere = button.getPseudoClassStates().contains(Squares.HERE);
      if (shown.isEmpty() || !shown.get(i).equals(facts.get(i)) || isHere != wasHere) {
        button.pseudoClassStateChanged(Squares.HERE, isHere);
        button.setGraphic(graphic(facts.get(i), isHere, i == 0, i == facts.size() - 1));
        button.setAccessibleText(spoken(facts.get(i)));
      }
    }
    shown = facts;
  }

  private String spoken(StepFacts f) {
    return board.say("window.step.spoken", f.word(), f.fact(), f.musts(), f.shoulds(), f.notes());
  }

  private Node graphic(StepFacts f, boolean here, boolean first, boolean last) {
    StackPane square = Squares.onString(f.done(), here, first, last);
    HBox flags = flags(f);
    flags.setAlignment(isNarrow ? Pos.CENTER : Pos.CENTER_RIGHT);
    if (isNarrow) {
      HBox row = new HBox(2, square, flags);
      row.setAlignment(Pos.CENTER_LEFT);
      return row;
    }
    Label word = new Label(f.word());
    word.getStyleClass().add("word");
    word.setMinWidth(Region.USE_PREF_SIZE);
    Label fact = new Label(f.fact());
    fact.getStyleClass().add("quiet");
    // The flags stand beside the word: beside the fact they would cut it short.
    Region between = new Region();
    HBox.setHgrow(between, Priority.ALWAYS);
    HBox top = new HBox(6, word, between, flags);
    top.setAlignment(Pos.CENTER_LEFT);
    VBox text = new VBox(0, top, fact);
    if (flags.getChildren().stream().mapToDouble(n -> n.prefWidth(-1)).sum() > BESIDE) {
      top.getChildren().remove(flags);
      flags.setAlignment(Pos.CENTER_LEFT);
      text.getChildren().add(flags);
    }
    text.setAlignment(Pos.CENTER_LEFT);
    text.setMinWidth(0);
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox row = new HBox(10, square, text);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private HBox flags(StepFacts f) {
    HBox flags = new HBox(4);
    flags.setMinWidth(Region.USE_PREF_SIZE);
    flag(flags, 0, f.musts(), Severity.MUST);
    if (!isNarrow || f.musts() == 0) {
      flag(flags, f.musts(), f.shoulds(), Severity.SHOULD);
    }
    if (!isNarrow && (f.musts() == 0 || f.shoulds() == 0)) {
      flag(flags, f.musts() + f.shoulds(), f.notes(), Severity.NOTE);
    }
    return flags;
  }

  /** A flag with the numbers that its findings have on the plan, after so many weightier ones. */
  private void flag(HBox flags, int before, int count, Severity severity) {
    if (count > 0) {
      String first = Integer.toString(before + 1);
      String last = isNarrow ? "+" : "–" + (before + count);
      String all = count == 1 ? first : first + last;
      flags.getChildren().add(new FlagIcon(all, severity, brush));
    }
  }
}
