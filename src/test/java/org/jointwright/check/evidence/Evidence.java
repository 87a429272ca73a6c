package org.jointwright.check.evidence;

import org.jointwright.check.Sketch;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;

/** A sketch laid and ready to be judged. */
final class Evidence {
  private Evidence() {}

  static Judged of(Sketch sketch) {
    return of(sketch, sketch);
  }

  /** What was laid, for what was asked. */
  static Judged of(Sketch asked, Sketch laid) {
    Layout layout = Layouts.of(laid.plan());
    return new Judged(asked.plan(), layout, layout.slabs().getFirst());
  }
}
