package org.jointwright.designer.pane;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;

/**
 * Holds a row of a scrolled pane where the hand found it. A click on a finding changes what stands
 * above it, some of it later, as it is worked out: without this the row would jump from under the
 * hand, or out of sight.
 */
final class RowHeld {
  /** How far from the rim of the pane it stays, pixels. */
  private static final double RIM = 12;

  private final ScrollPane pane;

  private Optional<String> row = Optional.empty();
  private double wanted;

  RowHeld(ScrollPane pane) {
    this.pane = pane;
    // Whoever scrolls or clicks elsewhere wants to see something else.
    pane.addEventFilter(ScrollEvent.ANY, e -> letGo());
    pane.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> letGo());
    pane.getContent().layoutBoundsProperty().addListener((o, was, is) -> later());
  }

  /** Holds the row of that id where it is, or where it comes in sight. */
  void hold(String id) {
    row = Optional.of(id);
    wanted = place(id).map(b -> b.getMinY() - top()).orElse(0.0);
    later();
  }

  void letGo() {
    row = Optional.empty();
  }

  private void later() {
    if (row.isPresent()) {
      Platform.runLater(() -> row.ifPresent(id -> place(id).ifPresent(b -> scroll(id, b))));
    }
  }

  private Optional<Bounds> place(String id) {
    Node node = pane.lookup(id);
    return node == null
        ? Optional.empty()
        : Optional.of(pane.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds())));
  }

  private double seen() {
    return pane.getViewportBounds().getHeight();
  }

  private double beyond() {
    return pane.getContent().getLayoutBounds().getHeight() - seen();
  }

  private double top() {
    return pane.getVvalue() * Math.max(0, beyond());
  }

  /** What a row brings with it stands under it in one box: all of it is to be seen. */
  private double height(String id, Bounds row) {
    Node node = pane.lookup(id);
    return node.getParent() instanceof Region box
        ? Math.max(row.getHeight(), box.getHeight())
        : row.getHeight();
  }

  private void scroll(String id, Bounds at) {
    double room = Math.max(0, seen() - height(id, at) - RIM);
    double place = Math.clamp(wanted, 0, room);
    if (beyond() > 0) {
      pane.setVvalue(Math.clamp((at.getMinY() - place) / beyond(), 0, 1));
    }
  }
}
