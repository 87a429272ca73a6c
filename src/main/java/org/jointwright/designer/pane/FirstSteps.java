package org.jointwright.designer.pane;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;

/** What blank paper offers besides drawing on it: one quiet line, and a sample one click away. */
final class FirstSteps extends HBox {
  FirstSteps(Board board, JobWork job) {
    super(14);
    Label line = new Label(board.say("window.first.line"));
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

  private void show(Desk desk) {
    boolean isBlank =
        desk.plan().slabs().isEmpty()
            && desk.plan().photo().isEmpty()
            && desk.draft().isEmpty()
            && desk.papers().file().isEmpty()
            && !desk.history().canUndo()
            && !desk.history().canRedo();
    setVisible(isBlank);
  }
}
