package org.jointwright.designer.pane;

import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;

/**
 * A row of a list that is pressed as a button is. A button would not give its text the height that
 * it needs at the width there is.
 */
final class PressedRow extends HBox {
  PressedRow(String id, String spoken, Runnable action, Node... content) {
    super(10, content);
    setId(id);
    getStyleClass().add("finding");
    setAlignment(Pos.TOP_LEFT);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(spoken);
    setOnMouseClicked(
        e -> {
          if (e.getButton() == MouseButton.PRIMARY) {
            requestFocus();
            action.run();
          }
        });
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
            action.run();
            e.consume();
          }
        });
  }

  /**
   * Tells {@code rest} when a hand comes to rest on it, by pointer or by keys, and when it leaves.
   */
  void whenRestedOn(Consumer<Boolean> rest) {
    hoverProperty().addListener((o, was, is) -> rest.accept(is || isFocused()));
    focusedProperty().addListener((o, was, is) -> rest.accept(is || isHover()));
  }
}
