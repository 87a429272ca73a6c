package org.jointwright.designer.pane;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;

/** What blank paper offers besides drawing on it: one quiet line, and a sample one click away. */
final class FirstSteps extends HBox {
  private final Label line;

  FirstSteps(Board board, JobWork job) {
    super(14);
    line = new Label(board.say("window.first.line"));
    line.getStyleClass().add("hint-line");
    Button sample = new Button(board.say("window.first.sample"));
    sample.setId("sample");
    sample.getStyleClass().add("small");
    sample.setOnAction(e -> job.next(Notice.Next.SAMPLE));
    getChildren().addAll(line, sample);
    setId("first-steps");
    getStyleClass().add("first-steps");
    setAlignment(Pos.CENTER_RIGHT);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    board.watch(this::show);
  }

  /** Leaves out the line where there is no room for it beside the scale. */
  void shorten(ObservableBooleanValue isNarrow) {
    line.visibleProperty().bind(Bindings.not(isNarrow));
    line.managedProperty().bind(line.visibleProperty());
  }

  private void show(Desk desk) {
    boolean isBlank =
        desk.plan().slabs().isEmpty()
            && desk.plan().photo().isEmpty()
            && desk.draft().isEmpty()
            && desk.hand().waiting().isEmpty()
            && desk.notice().isEmpty()
            && desk.papers().file().isEmpty()
            && !desk.history().canUndo()
            && !desk.history().canRedo();
    setVisible(isBlank);
  }
}
