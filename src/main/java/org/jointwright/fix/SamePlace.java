package org.jointwright.fix;

import java.util.Optional;
import org.jointwright.check.Finding;
import org.jointwright.check.Subject;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Panel;
import org.jointwright.shape.Region;

/**
 * Tells whether a rule finds the same thing in two layouts of a plan.
 *
 * @param before the one layout
 * @param after the other
 */
record SamePlace(Layout before, Layout after) {
  /** Places nearer than this are one, inches. */
  private static final double NEAR = 1;

  /** A panel is pointed at in its middle when the place is farther in than this, inches. */
  private static final double IN = 0.6;

  /** What rounding may add to a measure, as a share of its limit. */
  private static final double SLACK = 1e-4;

  /** Whether both are of one rule, at one place: a panel that was changed is still its place. */
  boolean holds(Finding old, Finding now) {
    if (!old.rule().equals(now.rule()) || !old.slab().equals(now.slab())) {
      return false;
    }
    boolean isOfOne =
        switch (old.subject()) {
          case Subject.OnEdge edge -> true;
          case Subject.OnFixedObject object -> true;
          case Subject.AtCorner corner -> true;
          case Subject.OnZone zone -> true;
          case Subject.OnSlab slab -> true;
          case Subject.OnPanel panel -> false;
          case Subject.OnJoint joint -> false;
        };
    if (isOfOne) {
      return old.subject().equals(now.subject());
    }
    if (old.at().distance(now.at()) <= NEAR) {
      return old.subject().getClass().equals(now.subject().getClass());
    }
    Optional<Region> was = middle(before, old);
    Optional<Region> is = middle(after, now);
    return was.isPresent()
        && is.isPresent()
        && (was.get().contains(now.at()) || is.get().contains(old.at()));
  }

  /** Whether the later finding says the same of the same place, and no worse. */
  boolean isNoWorse(Finding old, Finding now) {
    return holds(old, now)
        && old.severity() == now.severity()
        && old.key().equals(now.key())
        && excess(now) <= excess(old) + SLACK;
  }

  /** Whether the later finding is of a piece of the panel that the earlier is of, and no worse. */
  boolean isPiece(Finding old, Finding now) {
    return isNoWorse(old, now)
        && middle(before, old).filter(r -> r.contains(now.at())).isPresent()
        && middle(after, now).isPresent();
  }

  private static double excess(Finding f) {
    return f.limit() == 0
        ? Math.abs(f.measured())
        : Math.abs(f.measured() - f.limit()) / Math.abs(f.limit());
  }

  /** The panel that a finding is about, if it is about all of it. */
  private static Optional<Region> middle(Layout layout, Finding f) {
    if (!(f.subject() instanceof Subject.OnPanel on)) {
      return Optional.empty();
    }
    return layout.slab(f.slab()).stream()
        .flatMap(s -> s.panels().stream())
        .filter(p -> p.id().equals(on.panel()))
        .findFirst()
        .map(Panel::region)
        .filter(r -> r.outer().distance(f.at()) > IN);
  }
}
