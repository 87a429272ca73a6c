package org.jointwright.designer.canvas;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import org.jointwright.designer.state.Viewport;
import org.jointwright.picture.Picture;
import org.jointwright.plan.Photo;
import org.jointwright.shape.Point;

/** Paints the photo beneath. Its pixels are read once, for the photo painted last. */
public final class PhotoPaint {
  /** How strongly panels are painted over a photo. */
  public static final double PANELS = 0.75;

  /** More pixels along a side than this are not seen at any size that one draws at. */
  private static final double MOST = 4000;

  private Optional<Picture> read = Optional.empty();
  private Optional<Image> image = Optional.empty();

  /** Paints a photo where it lies. One whose pixels cannot be read is left out. */
  public void paint(GraphicsContext pen, Photo photo, Viewport viewport) {
    if (!read.equals(Optional.of(photo.picture()))) {
      image = image(photo.picture());
      read = Optional.of(photo.picture());
    }
    image.ifPresent(i -> paint(pen, photo, viewport, i));
  }

  /** The picture's pixels; empty where they cannot be read. */
  public static Optional<Image> image(Picture picture) {
    boolean isLarge = picture.width() > MOST || picture.height() > MOST;
    double most = isLarge ? MOST : 0;
    Image image = new Image(new ByteArrayInputStream(picture.bytes()), most, most, true, true);
    return Optional.of(image).filter(i -> !i.isError() && i.getWidth() > 0);
  }

  private static void paint(GraphicsContext pen, Photo photo, Viewport viewport, Image image) {
    Point at = viewport.toPaper(photo.middle());
    double wide = photo.width() * viewport.scale();
    double high = photo.height() * viewport.scale();
    pen.save();
    pen.translate(at.x(), at.y());
    // y runs down: what turns counter-clockwise in the plan is seen to turn so by a minus.
    pen.rotate(-photo.turn());
    pen.setGlobalAlpha(photo.opacity());
    pen.drawImage(image, -wide / 2, -high / 2, wide, high);
    pen.restore();
  }
}
