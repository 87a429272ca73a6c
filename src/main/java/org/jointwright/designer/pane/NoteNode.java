package org.jointwright.designer.pane;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import org.jointwright.designer.facts.Facts;
import org.jointwright.text.Units;

/** Sets what is said under the facts. */
final class NoteNode {
  private static final double SAMPLE = 36;

  private NoteNode() {}

  static Node of(Facts.Note note) {
    return switch (note.kind()) {
      case TITLE -> label(note.text(), "section");
      case BODY -> label(note.text(), "body");
      case QUIET -> label(note.text(), "quiet");
      case CRACK -> {
        Line dashes = new Line(0, 0, SAMPLE, 0);
        dashes.getStyleClass().add("crack-sample");
        HBox row = new HBox(10, dashes, label(note.text(), "quiet"));
        row.setAlignment(Pos.CENTER_LEFT);
        yield row;
      }
    };
  }

  private static Label label(String text, String style) {
    Label label = new Label(Units.bound(text));
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
