package org.jointwright.designer.node;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * Buttons or words in rows, as many to a row as there is room for. One that is longer than a row
 * goes on in a second line; the toolkit’s own pane would grow wider than what it stands in.
 */
public final class Flowing extends Pane {
  private final double across;
  private final double down;

  /**
   * An empty one.
   *
   * @param across what is free between two in a row, pixels of the look
   * @param down what is free between two rows
   */
  public Flowing(double across, double down) {
    this.across = across;
    this.down = down;
    setMinHeight(USE_PREF_SIZE);
  }

  /** Adds what stands after the others. */
  public void add(Labeled one) {
    one.setWrapText(true);
    getChildren().add(one);
  }

  /** A place among the rows. */
  private record Placed(Region one, double x, double y, double width, double height) {}

  private List<Placed> placed(double width) {
    Insets rim = getInsets();
    double room = Math.max(1, width - rim.getLeft() - rim.getRight());
    List<Placed> placed = new ArrayList<>();
    double x = 0;
    double y = 0;
    double row = 0;
    for (var child : getManagedChildren()) {
      Region one = (Region) child;
      double wide = Math.min(snapSizeX(one.prefWidth(-1)), room);
      double high = snapSizeY(one.prefHeight(wide));
      if (x > 0 && x + wide > room) {
        x = 0;
        y += row + down;
        row = 0;
      }
      placed.add(new Placed(one, rim.getLeft() + x, rim.getTop() + y, wide, high));
      x += wide + across;
      row = Math.max(row, high);
    }
    return placed;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computePrefHeight(double width) {
    double all = width < 0 ? prefWidth(-1) : width;
    double foot =
        placed(all).stream()
            .mapToDouble(p -> p.y() + p.height())
            .max()
            .orElse(getInsets().getTop());
    return foot + getInsets().getBottom();
  }

  @Override
  protected void layoutChildren() {
    placed(getWidth()).forEach(p -> p.one().resizeRelocate(p.x(), p.y(), p.width(), p.height()));
  }
}
