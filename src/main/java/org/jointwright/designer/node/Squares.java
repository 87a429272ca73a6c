package org.jointwright.designer.node;

import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jointwright.designer.facts.StepFacts.Done;

/** The squares of the path: open, half or full; chalk and large where you are. */
public final class Squares {
  /** Set on what stands where the user is. */
  public static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private static final double SMALL = 13;
  private static final double LARGE = 18;
  private static final double ROW = 58;
  private static final double COLUMN = 24;

  private Squares() {}

  /** A square on its piece of string line; the string starts at the first and ends at the last. */
  public static StackPane onString(Done done, boolean here, boolean first, boolean last) {
    Region string = new Region();
    string.getStyleClass().add("string");
    string.setMinWidth(2);
    string.setMaxWidth(2);
    string.setMaxHeight(Double.MAX_VALUE);
    StackPane.setMargin(string, new Insets(first ? ROW / 2 : 0, 0, last ? ROW / 2 : 0, 0));
    StackPane pane = new StackPane(string, square(done, here));
    pane.setAlignment(Pos.CENTER);
    pane.setMinSize(COLUMN, ROW);
    pane.setPrefSize(COLUMN, ROW);
    pane.setMaxSize(COLUMN, ROW);
    return pane;
  }

  /** A square by itself. */
  public static Region square(Done done, boolean here) {
    double size = here ? LARGE : SMALL;
    StackPane square = new StackPane();
    square.getStyleClass().add("square");
    square.pseudoClassStateChanged(HERE, here);
    square.setMinSize(size, size);
    square.setMaxSize(size, size);
    Region fill = new Region();
    fill.getStyleClass().add("fill");
    fill.setMaxWidth(Double.MAX_VALUE);
    double high =
        switch (done) {
          case OPEN -> 0;
          case BEGUN -> size / 2;
          case DONE -> size;
        };
    fill.setMinHeight(high);
    fill.setMaxHeight(high);
    StackPane.setAlignment(fill, Pos.BOTTOM_CENTER);
    square.getChildren().add(fill);
    return square;
  }
}
