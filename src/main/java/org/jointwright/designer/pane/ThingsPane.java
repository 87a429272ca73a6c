package org.jointwright.designer.pane;

import java.util.List;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SelectionMode;
import javafx.scene.layout.VBox;
import org.jointwright.designer.facts.Names;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.edit.Thing;

/** The things on the plan by their names: one is picked, or several, as in any list. */
final class ThingsPane extends VBox {
  private static final double ROW = 28;
  private static final int MOST = 7;

  private final Board board;
  private final Label title;
  private final ListView<Thing> list = new ListView<>();
  private boolean isShowing;
  private boolean isWaiting;

  ThingsPane(Board board) {
    super(6);
    this.board = board;
    setId("things-pane");
    title = new Label(board.say("window.things.title"));
    title.getStyleClass().add("section");
    title.setLabelFor(list);
    list.setId("things");
    list.getStyleClass().add("things");
    list.setAccessibleText(board.say("window.things.title"));
    list.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    list.setFixedCellSize(ROW);
    list.setCellFactory(l -> new Cell());
    list.getSelectionModel()
        .getSelectedIndices()
        .addListener((ListChangeListener<Integer>) c -> chosen());
    board.watch(this::show);
  }

  private final class Cell extends ListCell<Thing> {
    @Override
    protected void updateItem(@org.jspecify.annotations.Nullable Thing thing, boolean empty) {
      super.updateItem(thing, empty);
      setText(empty || thing == null ? "" : Names.listed(thing, board.words()));
    }
  }

  /** A click changes the selection in steps; only what comes of all of them is picked. */
  private void chosen() {
    if (isShowing || isWaiting) {
      return;
    }
    isWaiting = true;
    Platform.runLater(
        () -> {
          isWaiting = false;
          List<Thing> things = List.copyOf(list.getSelectionModel().getSelectedItems());
          board.change(
              d -> Things.of(d.picked()).equals(things) ? d : d.picking(Things.pick(things)));
        });
  }

  private void show(Desk desk) {
    List<Thing> all = Things.all(desk.plan());
    boolean isNeeded =
        desk.sight().step() == Step.OUTLINE
            && all.size() > 1
            && desk.draft().isEmpty()
            && desk.hand().waiting().isEmpty();
    setVisible(isNeeded);
    setManaged(isNeeded);
    if (!isNeeded) {
      return;
    }
    if (getChildren().isEmpty()) {
      // Not before: the look of a list takes its time, and the first window waits for it.
      getChildren().addAll(title, list);
    }
    isShowing = true;
    if (!list.getItems().equals(all)) {
      list.getItems().setAll(all);
      list.setPrefHeight(Math.min(MOST, all.size()) * ROW + 4);
    }
    List<Thing> picked = Things.of(desk.picked());
    if (!list.getSelectionModel().getSelectedItems().equals(picked)) {
      list.getSelectionModel().clearSelection();
      picked.forEach(t -> list.getSelectionModel().select(t));
    }
    isShowing = false;
  }
}
