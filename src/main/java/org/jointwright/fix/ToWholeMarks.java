package org.jointwright.fix;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.OffMarks;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.fix.line.Relaid;
import org.jointwright.fix.line.Straight;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Moves all lines of a slab that end off the whole marks of the tape to the nearest ones. */
final class ToWholeMarks implements Remedy {
  /** No more lines than this are moved in one go. */
  private static final int MOST = 16;

  @Override
  public List<Fix> proposals(Broken broken) {
    Slab slab = broken.slab();
    Set<String> tried = new HashSet<>();
    for (int i = 0; i < MOST; i++) {
      Optional<OffMarks.Off> off = next(broken, slab, tried);
      if (off.isEmpty()) {
        break;
      }
      Floor floor = Floor.of(broken.plan(), slab);
      Joint joint = floor.joint(off.get().end().joint().id()).orElseThrow();
      Point to = whole(off.get(), broken.marks().step());
      Optional<List<Joint>> moved =
          Straight.of(floor, joint)
              .filter(l -> !l.isLocked())
              .flatMap(l -> Relaid.onto(floor, l, to, heading(broken, l, to)));
      tried.add(joint.id());
      if (moved.isPresent()) {
        Redraft redraft = Redraft.of(slab).with(moved.get());
        slab = slab.withLaid(redraft.joints(), redraft.boxOuts());
      }
    }
    Redraft all = new Redraft(slab.id(), unlocked(broken.slab(), slab), slab.boxOuts());
    return tried.isEmpty()
        ? List.of()
        : List.of(
            Fix.of("fix.marks", "fix.did.marks", List.of(slab.id(), tried.size()), all.edit()));
  }

  /** A joint end off its mark whose line was not moved yet. */
  private static Optional<OffMarks.Off> next(Broken broken, Slab slab, Set<String> tried) {
    Slab free = slab.withLaid(unlocked(broken.slab(), slab), slab.boxOuts());
    Plan plan = broken.plan().withSlab(slab.id(), s -> free);
    Layout layout = Layouts.of(plan);
    return layout.slab(slab.id()).stream()
        .flatMap(s -> OffMarks.of(new Judged(broken.asked(), layout, s)).stream())
        .filter(o -> !tried.contains(o.end().joint().id()))
        .findFirst();
  }

  /** The joints with those locked only that were so before: a locked one counts as forced. */
  private static List<Joint> unlocked(Slab before, Slab now) {
    return now.joints().stream()
        .map(j -> j.withLocked(before.lockedJoints().stream().anyMatch(b -> b.id().equals(j.id()))))
        .toList();
  }

  /** Towards the whole mark nearest to the line's other end, or as it runs where that has none. */
  private static Point heading(Broken broken, Straight line, Point to) {
    double step = broken.marks().step();
    List<Point> ends = line.ends();
    Point far =
        ends.getFirst().distance(to) > ends.getLast().distance(to)
            ? ends.getFirst()
            : ends.getLast();
    if (broken.marks().of(far).isEmpty()) {
      return broken.floor().isOnRim(far) ? far.minus(to).unit() : line.heading();
    }
    return broken.marks().lettering().tapesAt(far, Floor.ON).stream()
        .filter(Tape::isStraight)
        .findFirst()
        .map(t -> onTape(t, Math.rint(t.distanceTo(far) / step) * step).minus(to).unit())
        .orElseGet(line::heading);
  }

  private static Point onTape(Tape tape, double along) {
    Point from = tape.from().at();
    return from.plus(tape.to().at().minus(from).unit().times(along));
  }

  private static Point whole(OffMarks.Off off, double step) {
    Edge edge = off.end().edge();
    Point at = off.end().at();
    if (!(edge instanceof Segment)) {
      return at;
    }
    return onTape(off.tape(), Math.rint(off.along() / step) * step);
  }
}
