package org.jointwright.designer.node;

import java.util.Arrays;
import java.util.Comparator;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * Words that go on in another line where there is no room, but never within a word: it is at least
 * as wide as its longest. The toolkit’s own breaks words once what stands beside wants the room.
 */
public final class WholeWords extends Label {
  /** What was measured last, for a pane is laid out often and its words seldom change. */
  private String measured = "";

  private Font font = Font.getDefault();
  private double longest;

  private final double most;

  /**
   * Without words as yet.
   *
   * @param most how wide it is at least where a word is longer than that, pixels of the look: such
   *     a word, a name that someone gave, is broken rather than sticking out of the window
   */
  public WholeWords(double most) {
    this.most = most;
    setWrapText(true);
  }

  @Override
  protected double computeMinWidth(double height) {
    Insets rim = getInsets();
    return Math.ceil(Math.min(longest(), most)) + rim.getLeft() + rim.getRight();
  }

  private double longest() {
    if (!measured.equals(getText()) || !font.equals(getFont())) {
      measured = getText();
      font = getFont();
      longest =
          Arrays.stream(measured.split(" ", -1))
              .map(this::width)
              .max(Comparator.naturalOrder())
              .orElse(0.0);
    }
    return longest;
  }

  private double width(String word) {
    Text text = new Text(word);
    text.setFont(font);
    return text.getLayoutBounds().getWidth();
  }
}
