package org.jointwright.designer.pane;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.jointwright.designer.facts.StepFacts.Done;

/** What the squares of the path mean. */
final class PathLegend extends HBox {
  PathLegend(Board board) {
    super(12);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("legend");
    add(Done.DONE, board.say("window.path.done"));
    add(Done.BEGUN, board.say("window.path.begun"));
    add(Done.OPEN, board.say("window.path.open"));
  }

  private void add(Done done, String word) {
    Label label = new Label(word, Squares.square(done, false));
    label.setGraphicTextGap(6);
    label.getStyleClass().add("least");
    getChildren().add(label);
  }
}
