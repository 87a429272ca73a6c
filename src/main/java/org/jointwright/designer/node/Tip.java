package org.jointwright.designer.node;

import java.util.List;
import javafx.scene.control.Label;

/** A few lines beside what the pointer is at, over everything, in nobody’s way. */
public final class Tip extends Label {
  /** How far from the pointer, pixels. */
  private static final double OFF = 14;

  /** Wider it is written in more lines, pixels. */
  private static final double WIDEST = 420;

  /** How far from the rim it stays, pixels. */
  private static final double RIM = 8;

  private List<String> lines = List.of();

  /** With nothing to say yet. */
  public Tip() {
    setId("tip");
    getStyleClass().add("tip");
    setWrapText(true);
    setMouseTransparent(true);
    setManaged(false);
    setVisible(false);
  }

  /**
   * Says something beside a point, within so much room; nothing where there are no lines.
   *
   * @param said what it says
   */
  public void say(List<String> said, double x, double y, double width, double height) {
    setVisible(!said.isEmpty());
    if (said.isEmpty() || said.equals(lines)) {
      lines = said;
      return;
    }
    lines = said;
    setText(String.join("\n", said));
    applyCss();
    double wide = Math.min(Math.min(WIDEST, width - 2 * RIM), prefWidth(-1));
    double high = prefHeight(wide);
    boolean isBelow = y + OFF + high <= height - RIM;
    double left = Math.clamp(x + OFF, RIM, Math.max(RIM, width - RIM - wide));
    double top = isBelow ? y + OFF : Math.max(RIM, y - OFF - high);
    resizeRelocate(left, top, wide, high);
  }
}
