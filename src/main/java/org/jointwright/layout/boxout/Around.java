package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;

/**
 * One way to box out an object, or several that stand close together: those that share a box-out
 * have the same ring each.
 *
 * @param boxes one for each object
 */
public record Around(List<BoxOut> boxes) {
  /** Copies the list. */
  public Around {
    boxes = List.copyOf(boxes);
  }

  /** One box-out alone. */
  public static Around one(BoxOut box) {
    return new Around(List.of(box));
  }

  /** The ids of the objects. */
  public List<String> objects() {
    return boxes.stream().map(BoxOut::fixed).toList();
  }

  /** One outline round all of those objects. */
  static Around shared(List<FixedObject> objects, Outline outline) {
    return new Around(
        objects.stream().map(f -> new BoxOut(f.id(), outline, Kept.NOTHING)).toList());
  }

  /** All of these at once. */
  static Around all(Around... parts) {
    List<BoxOut> boxes = new ArrayList<>();
    Arrays.stream(parts).forEach(p -> boxes.addAll(p.boxes()));
    return new Around(boxes);
  }
}
