package org.jointwright.designer.canvas;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.transform.Scale;

/**
 * What everything is painted with: the colours, and how large.
 *
 * @param theme the colours
 * @param times how many times as large as the look is meant everything in the window is
 */
public record Brush(Theme theme, double times) {
  /**
   * Makes a canvas so large, in pixels of the look. It has as many pixels as are seen, so that
   * where the window is enlarged its marks are drawn larger, not blown up.
   */
  public void size(Canvas canvas, double width, double height) {
    canvas.setWidth(Math.ceil(width * times));
    canvas.setHeight(Math.ceil(height * times));
    canvas.getTransforms().setAll(new Scale(1 / times, 1 / times));
  }

  /** A painter on a canvas of that size, which draws in pixels of the look. */
  public Painter painter(Canvas canvas) {
    GraphicsContext pen = canvas.getGraphicsContext2D();
    pen.setTransform(times, 0, 0, times, 0, 0);
    return new Painter(pen, theme, canvas.getWidth() / times, canvas.getHeight() / times);
  }
}
