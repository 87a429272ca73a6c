package org.jointwright.designer.pane;

import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import org.jointwright.designer.facts.StepFacts.Done;
import org.jointwright.designer.node.Squares;

/** What the squares of the path mean. */
final class PathLegend extends FlowPane {
  PathLegend(Board board) {
    super(12, 6);
    setMinHeight(Region.USE_PREF_SIZE);
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
