package org.jointwright.designer.node;

import java.util.function.Consumer;
import javafx.scene.Group;
import javafx.scene.canvas.Canvas;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.canvas.Painter;

/** A small picture among the words, painted once. */
public class Vignette extends Group {
  /**
   * A picture.
   *
   * @param width its width, in pixels of the look
   * @param height its height
   * @param painting paints it
   */
  public Vignette(Brush brush, double width, double height, Consumer<Painter> painting) {
    Canvas canvas = new Canvas();
    brush.size(canvas, width, height);
    painting.accept(brush.painter(canvas));
    getChildren().add(canvas);
  }
}
