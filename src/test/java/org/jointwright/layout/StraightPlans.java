package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** Invented plans of slabs with straight edges, the same for the same seed. */
final class StraightPlans {
  /** What is made. */
  enum Kind {
    RECTANGLE,
    L,
    T,
    U,
    Z,
    PLUS,
    STEPS,
    TRAPEZOID,
    SKEW,
    TRIANGLE,
    ACUTE_LOT,
    FLARE,
    JOG,
    NEAR_COLLINEAR,
    STRIP,
    BENT_WALK,
    OUT_OF_SQUARE,
    OPENING,
    POST,
    DRAIN,
    ADJOINING,
    WIDEN,
    BAY;

    /** Whether all its corners are square, but for what stands in it. */
    boolean isSquare() {
      return switch (this) {
        case RECTANGLE, L, T, U, Z, PLUS, STEPS, JOG, STRIP, OPENING, ADJOINING -> true;
        default -> false;
      };
    }
  }

  private final Drawn drawn;
  private final StraightOutlines outlines;

  private StraightPlans(long seed) {
    this.drawn = new Drawn(seed);
    this.outlines = new StraightOutlines(drawn);
  }

  /** A plan of a kind. */
  static Plan of(Kind kind, long seed) {
    return new StraightPlans(seed * 31 + kind.ordinal()).plan(kind);
  }

  private Plan plan(Kind kind) {
    Length thickness = Length.inches(drawn.count(4, 6));
    Plan empty = drawn.isMetric() ? inMetres() : Plan.EMPTY;
    if (kind == Kind.ADJOINING) {
      return empty.withSlabs(adjoining(thickness));
    }
    Slab slab = Slab.of("slab", outline(kind)).withThickness(thickness);
    if (kind == Kind.STRIP || kind == Kind.BENT_WALK) {
      slab = slab.withUse(Use.FOOT);
    }
    Box box = slab.outline().ring().box();
    return switch (kind) {
      case OPENING ->
          empty.withSlabs(
              List.of(
                  slab.withOpenings(List.of(new Opening(opening(box), Map.of(), Kept.NOTHING)))));
      case POST -> empty.withSlabs(List.of(slab)).withFixed(List.of(post(box)));
      case DRAIN -> empty.withSlabs(List.of(slab)).withFixed(List.of(drain(box)));
      default -> empty.withSlabs(List.of(slab));
    };
  }

  private static Plan inMetres() {
    Plan p = Plan.EMPTY;
    return new Plan(
        LengthUnit.METRE, p.north(), p.job(), p.slabs(), p.fixed(), p.given(), p.pour(), p.kept());
  }

  private Outline outline(Kind kind) {
    return switch (kind) {
      case L -> outlines.l();
      case T -> outlines.t();
      case U -> outlines.u();
      case Z -> outlines.z();
      case PLUS -> outlines.plus();
      case STEPS -> outlines.steps();
      case TRAPEZOID -> outlines.trapezoid();
      case SKEW -> outlines.skew();
      case TRIANGLE -> outlines.triangle();
      case ACUTE_LOT -> outlines.acuteLot();
      case FLARE -> outlines.flare();
      case JOG -> outlines.jog();
      case WIDEN -> outlines.widen();
      case BAY -> outlines.bay();
      case NEAR_COLLINEAR -> outlines.nearCollinear();
      case STRIP -> outlines.strip();
      case BENT_WALK -> outlines.bentWalk();
      case OUT_OF_SQUARE -> outlines.outOfSquare();
      case OPENING, POST, DRAIN ->
          StraightOutlines.rectangle(0, 0, drawn.feet(12, 32), drawn.feet(12, 32));
      case RECTANGLE, ADJOINING -> outlines.rectangle();
    };
  }

  /** A drive or patio, and beside it a walk, an apron or another half. */
  private List<Slab> adjoining(Length thickness) {
    double w = drawn.feet(10, 30);
    double h = drawn.feet(10, 36);
    Outline one = StraightOutlines.rectangle(0, 0, w, h);
    double part = drawn.onceIn(3) ? h : drawn.inches(36, h);
    double from = part == h ? 0 : drawn.inches(0, h - part);
    Outline two = StraightOutlines.rectangle(w, from, drawn.feet(3, 24), part);
    List<Slab> slabs = new ArrayList<>();
    slabs.add(Slab.of("one", one).withThickness(thickness));
    slabs.add(
        Slab.of("two", two)
            .withThickness(drawn.onceIn(2) ? thickness : Length.inches(drawn.count(4, 6))));
    return slabs;
  }

  private Outline opening(Box box) {
    double w = drawn.feet(1.5, 5);
    double h = drawn.onceIn(2) ? w : drawn.feet(1.5, 5);
    double x = drawn.inches(36, box.width() - w - 36);
    double y = drawn.inches(36, box.height() - h - 36);
    return StraightOutlines.rectangle(x, y, w, h);
  }

  private FixedObject post(Box box) {
    Point at = new Point(drawn.inches(18, box.width() - 18), drawn.inches(18, box.height() - 18));
    return new FixedObject(
        "post",
        "slab",
        FixedKind.POST,
        new FixedShape.Round(at, Length.inches(drawn.count(3, 12)), Kept.NOTHING),
        Kept.NOTHING);
  }

  private FixedObject drain(Box box) {
    boolean long1 = drawn.onceIn(2);
    double a = long1 ? drawn.feet(3, 8) : drawn.inches(8, 24);
    double b = long1 ? drawn.inches(4, 10) : a;
    boolean upright = drawn.onceIn(2);
    double w = upright ? b : a;
    double h = upright ? a : b;
    double x = drawn.inches(24, box.width() - w - 24);
    double y = drawn.inches(24, box.height() - h - 24);
    return new FixedObject(
        "drain",
        "slab",
        FixedKind.DRAIN,
        new FixedShape.Outlined(StraightOutlines.rectangle(x, y, w, h), Kept.NOTHING),
        Kept.NOTHING);
  }
}
