package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.canvas.SlabPicture;
import org.jointwright.designer.facts.ChoiceFacts;
import org.jointwright.designer.node.Vignette;
import org.jointwright.drawing.Role;

/** One of the layouts to choose among: what it is best at, its picture, its figures. */
final class LayoutCard {
  private static final double WIDE = 200;
  private static final double HIGH = 140;
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final Board board;
  private final String slab;
  private final ChoiceFacts.One one;
  private final Label now = new Label();
  private final PressedRow node;

  LayoutCard(Board board, Brush brush, String slab, int index, ChoiceFacts.One one) {
    this.board = board;
    this.slab = slab;
    this.one = one;
    String id = "layout-" + (index + 1);
    now.setId(id + "-now");
    now.getStyleClass().add("source");
    Label name = wrapped(one.name(), "card-name");
    name.setId(id + "-name");
    Label figures = wrapped(one.figures(), "source");
    VBox all = new VBox(4, name, picture(brush), figures, now);
    all.setMinWidth(0);
    node =
        new PressedRow(
            id,
            board.say("window.layouts.spoken", one.name(), one.figures()),
            () -> board.change(d -> ChoiceFacts.taken(d, slab, index)),
            all);
    node.getStyleClass().add("layout-card");
    mark(one);
  }

  PressedRow node() {
    return node;
  }

  /** Whether the card shows that layout of that slab, in force or not. */
  boolean shows(String of, ChoiceFacts.One other) {
    return slab.equals(of)
        && one.name().equals(other.name())
        && one.figures().equals(other.figures())
        && one.layout().equals(other.layout());
  }

  /** Marks the one in force. */
  void mark(ChoiceFacts.One value) {
    node.pseudoClassStateChanged(HERE, value.isInForce());
    now.setText(value.isInForce() ? board.say("window.layouts.now") : "");
    now.setVisible(value.isInForce());
    now.setManaged(value.isInForce());
  }

  private Node picture(Brush brush) {
    return new Vignette(
        brush,
        WIDE,
        HIGH,
        painter -> {
          painter.cover(Role.PAPER);
          painter.paint(SlabPicture.of(one.layout(), slab, WIDE, HIGH));
        });
  }

  static Label wrapped(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.setMinWidth(0);
    return label;
  }

  /** A card for each layout. */
  static List<LayoutCard> all(Board board, Brush brush, String slab, List<ChoiceFacts.One> ones) {
    List<LayoutCard> cards = new ArrayList<>();
    for (int i = 0; i < ones.size(); i++) {
      cards.add(new LayoutCard(board, brush, slab, i, ones.get(i)));
    }
    return cards;
  }
}
