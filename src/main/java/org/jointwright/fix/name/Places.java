package org.jointwright.fix.name;

import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Stop;
import org.jointwright.joint.Source;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Tape;
import org.jointwright.practice.JointMarks;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * What places on a slab are called, and where a tape has whole marks.
 *
 * @param lettering the letters of the corners
 * @param unit the plan's unit
 */
public record Places(Lettering lettering, LengthUnit unit) {
  /**
   * A place on a tape.
   *
   * @param tape the side's name by its corners
   * @param at the running distance from the first of them
   */
  public record Mark(String tape, Length at) {}

  /** The step of whole marks, inches: an inch, or 10 mm in a metric plan. */
  public double step() {
    return JointMarks.step(UnitSystem.of(unit)).value().inches();
  }

  /** The mark of a place, if it stands on a side and not at a corner. */
  public Optional<Mark> of(Point p) {
    if (lettering.cornerAt(p).isPresent()) {
      return Optional.empty();
    }
    return lettering.tapesAt(p, Floor.ON).stream()
        .filter(t -> t.distanceTo(p) > Floor.ON && t.length() - t.distanceTo(p) > Floor.ON)
        .findFirst()
        .map(t -> new Mark(t.name(), Length.inches(t.distanceTo(p))));
  }

  /** The mark of the first end of a path that has one. */
  public Optional<Mark> of(Path path) {
    return of(path.start()).or(() -> of(path.end()));
  }

  /** What a line is called where another meets it: a corner, a side, a joint, an object. */
  public Target target(String slab, Stop stop) {
    return switch (stop.source()) {
      case Source.OnJoint j -> Target.joint(new JointName(slab, j.joint()));
      case Source.OnBoxOut b -> Target.object(b.fixed());
      case Source.OnOutline o -> edge(stop.at());
      case Source.OnOpening o -> edge(stop.at());
    };
  }

  private Target edge(Point p) {
    return lettering
        .cornerAt(p)
        .map(c -> Target.corner(c.letter()))
        .orElseGet(() -> Target.side(side(p)));
  }

  /** The letter of the corner at a place, or the name of the side there; empty where none is. */
  public String side(Point p) {
    return lettering
        .cornerAt(p)
        .map(c -> c.letter())
        .or(() -> lettering.tapesAt(p, Floor.ON).stream().findFirst().map(Tape::name))
        .orElse("");
  }

  /**
   * A place near {@code amid} from which a line reaches a straight side of the outline at a whole
   * mark; {@code amid} where the line reaches none.
   */
  public Point snapped(Floor floor, Point amid, Point heading) {
    for (Point way : List.of(heading.times(-1), heading)) {
      Optional<Stop> end = Chalk.end(floor, amid, way, Chalk.Reach.THROUGH, java.util.Set.of());
      if (end.isPresent() && end.get().source() instanceof Source.OnOutline on) {
        Edge edge = floor.slab().outline().ring().edges().get(on.edge());
        if (edge instanceof Segment && Math.abs(edge.direction(0).cross(heading)) > 0.9) {
          double at = edge.start().distance(end.get().at());
          double whole = Math.rint(at / step()) * step();
          return amid.plus(edge.direction(0).times(whole - at));
        }
      }
    }
    return amid;
  }
}
