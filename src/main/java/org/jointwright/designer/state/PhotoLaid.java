package org.jointwright.designer.state;

import java.util.Optional;
import org.jointwright.picture.Picture;
import org.jointwright.plan.Photo;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.shape.Point;

/** Lays a picture beneath the plan. */
public final class PhotoLaid {
  /** How much of the paper it takes at first. */
  private static final double SHARE = 0.8;

  private PhotoLaid() {}

  /**
   * The desk with a picture beneath, picked. It takes the place of the one that lay there, else
   * lies about {@code at}, or in the middle of what is seen, as large as can be seen whole.
   */
  public static Desk on(Desk desk, String name, Picture picture, Optional<Point> at) {
    Photo photo =
        desk.plan()
            .photo()
            .map(p -> Photo.laid(name, picture, p.middle(), p.width()).withOpacity(p.opacity()))
            .orElseGet(() -> fresh(desk.viewport(), name, picture, at));
    return desk.withStep(Step.OUTLINE).editedOnly(PhotoEdit.of(photo)).picking(new Pick.AtPhoto());
  }

  private static Photo fresh(Viewport view, String name, Picture picture, Optional<Point> at) {
    Point middle = at.orElse(view.centre());
    Photo one = Photo.laid(name, picture, middle, 1000);
    double across = view.inches(view.width()) * SHARE / one.box().width();
    double up = view.inches(view.height()) * SHARE / one.box().height();
    return one.withWidth(1000 * Math.min(across, up));
  }
}
