package org.jointwright.designer.node;

import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Something shown so many times as large as it is made, in all of the room there is. */
public final class Magnified extends Region {
  private final Region content;
  private final double times;

  /**
   * Shows {@code content}.
   *
   * @param times how many times as large, above 0
   */
  public Magnified(Region content, double times) {
    this.content = content;
    this.times = times;
    content.getTransforms().setAll(new Scale(times, times));
    getChildren().add(content);
  }

  @Override
  protected void layoutChildren() {
    content.resizeRelocate(0, 0, getWidth() / times, getHeight() / times);
  }
}
