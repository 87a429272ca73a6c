package org.jointwright.designer.pane;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.jointwright.designer.facts.HeadFacts;
import org.jointwright.designer.state.Desk;

/** The bar: menus, the job's name, what Undo undoes, when the plan was kept. */
final class TopBar extends BorderPane {
  private final Board board;
  private final Label job = new Label();
  private final Button undo = new Button();
  private final Label kept = new Label();

  TopBar(Board board, MenuBar menus) {
    this.board = board;
    getStyleClass().add("bar");
    job.getStyleClass().add("job");
    job.setId("job-title");
    undo.setId("undo");
    undo.getStyleClass().add("small");
    undo.setOnAction(e -> board.change(Desk::undone));
    kept.getStyleClass().add("quiet");
    kept.setId("kept");
    HBox right = new HBox(20, undo, kept);
    right.setAlignment(Pos.CENTER_RIGHT);
    setLeft(menus);
    setCenter(job);
    setRight(right);
    BorderPane.setAlignment(job, Pos.CENTER);
    BorderPane.setAlignment(menus, Pos.CENTER_LEFT);
    board.watch(this::show);
  }

  private void show(Desk desk) {
    HeadFacts head = HeadFacts.of(desk, board.words());
    job.setText(head.job());
    undo.setText(
        head.undo()
            .map(u -> board.say("window.bar.undo", u))
            .orElse(board.say("window.menu.undo")));
    undo.setDisable(head.undo().isEmpty());
    kept.setText(head.kept());
  }
}
