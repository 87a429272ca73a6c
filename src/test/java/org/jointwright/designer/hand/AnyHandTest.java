package org.jointwright.designer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.jointwright.designer.facts.BadFigure;
import org.jointwright.designer.facts.Deed;
import org.jointwright.designer.facts.EditNames;
import org.jointwright.designer.facts.Facts;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.facts.Row;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Soundness;
import org.jointwright.designer.state.Step;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.History;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Whatever a hand does, in whatever order: nothing breaks, and all of it is undone. */
class AnyHandTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static final List<String> TYPED =
      List.of("", "0", "3'", "-2'", "12", "24'6", "90", "-45", "nonsense", "1 in", "400'", "36 in");

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(List.of(p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)));
  }

  private static Plan start() {
    Slab drive =
        Slab.of(
                "drive",
                new Outline(
                    List.of(
                        Vertex.at(p(0, 0)),
                        Vertex.arc(p(240, 0), p(270, 100)),
                        Vertex.at(p(240, 200)),
                        Vertex.at(p(240, 360)),
                        Vertex.at(p(0, 360)))))
            .withOpenings(List.of(new Opening(box(60, 60, 48, 48), Map.of(), Kept.NOTHING)));
    return Plan.EMPTY.withSlabs(List.of(drive, Slab.of("walk", box(240, 220, 200, 48))));
  }

  @Test
  void nothingBreaksAndEverythingIsUndone() {
    for (long seed = 1; seed <= 100; seed++) {
      Random random = new Random(seed);
      Desk desk = Desk.begun(start()).fitted();
      List<String> did = new ArrayList<>();
      try {
        for (int i = 0; i < 60; i++) {
          desk = anything(desk, random, did);
          for (Slab s : desk.plan().slabs()) {
            assertThat(Soundness.holds(desk.plan(), s.id())).as("slab %s", s.id()).isTrue();
          }
          FactsOf.desk(desk, WORDS);
        }
        for (History.Step step : desk.history().past()) {
          assertThat(EditNames.of(step, WORDS)).isNotBlank();
        }
        while (desk.history().canUndo()) {
          desk = desk.undone();
        }
        assertThat(desk.plan()).isEqualTo(start());
      } catch (RuntimeException | AssertionError fault) {
        throw new AssertionError("seed " + seed + " after " + did, fault);
      }
    }
  }

  private static Desk anything(Desk desk, Random random, List<String> did) {
    int kind = random.nextInt(12);
    return switch (kind) {
      case 0, 1, 2, 3 -> drag(desk, random, did);
      case 4, 5 -> {
        Facts facts = FactsOf.desk(desk, WORDS);
        List<Deed> deeds = facts.deeds();
        if (deeds.isEmpty()) {
          yield desk;
        }
        Deed deed = deeds.get(random.nextInt(deeds.size()));
        did.add("press " + deed.id());
        yield deed.what() instanceof Deed.OnDesk on ? on.change().apply(desk) : desk;
      }
      case 6, 7 -> type(desk, random, did);
      case 8 -> {
        did.add("walk");
        yield random.nextBoolean() ? Walk.on(desk, random.nextBoolean()) : Walk.entered(desk);
      }
      case 9 -> {
        Point way = p(1, 0).turned(random.nextInt(4) * Math.PI / 2);
        Point whole = p(Math.rint(way.x()), Math.rint(way.y()));
        did.add("arrow " + whole);
        yield Arrows.pressed(desk, whole, new double[] {1, 12, 1 / 16.0}[random.nextInt(3)]);
      }
      case 10 -> {
        did.add("enter");
        yield desk.hand().waiting().isPresent()
            ? SetDown.place(desk, "slab")
            : Drafting.enter(desk, new Said.Silent(), "slab");
      }
      default -> other(desk, random, did);
    };
  }

  private static Desk other(Desk desk, Random random, List<String> did) {
    switch (random.nextInt(5)) {
      case 0 -> {
        Drawn what = Drawn.values()[random.nextInt(Drawn.values().length)];
        did.add("draw " + what);
        return Drafting.begin(desk, what);
      }
      case 1 -> {
        did.add("ready shape");
        return SetDown.begin(desk);
      }
      case 2 -> {
        did.add("undo");
        return desk.undone();
      }
      case 3 -> {
        did.add("redo");
        return desk.redone();
      }
      default -> {
        Step step = random.nextInt(4) == 0 ? Step.JOINTS : Step.OUTLINE;
        did.add("at " + step);
        return desk.withStep(step);
      }
    }
  }

  private static Desk drag(Desk desk, Random random, List<String> did) {
    Pointer grip = anywhere(desk, random);
    boolean adds = random.nextInt(6) == 0;
    did.add((adds ? "add at " : "press at ") + grip.plan());
    Gesture gesture = Gestures.begin(desk, grip, "slab", adds);
    Desk now = gesture.press(desk, grip);
    Pointer last = grip;
    int steps = random.nextInt(4);
    for (int i = 0; i < steps; i++) {
      last = anywhere(desk, random);
      did.add("to " + last.plan());
      now = gesture.drag(now, last);
      if (random.nextInt(12) == 0) {
        did.add("undo meanwhile");
        now = now.undone();
      }
    }
    return gesture.release(now, last);
  }

  /** On a corner or half way along a side, near one, or somewhere. */
  private static Pointer anywhere(Desk desk, Random random) {
    List<Point> points = new ArrayList<>();
    for (Slab s : desk.plan().slabs()) {
      s.outline()
          .ring()
          .edges()
          .forEach(e -> points.addAll(List.of(e.start(), e.at(0.5), e.at(0.3))));
      s.openings()
          .forEach(
              o ->
                  o.outline()
                      .ring()
                      .edges()
                      .forEach(e -> points.addAll(List.of(e.start(), e.at(0.5)))));
      s.joints()
          .forEach(
              j -> points.addAll(List.of(j.path().start(), j.path().edges().getFirst().at(0.4))));
    }
    desk.plan().fixed().forEach(f -> points.add(f.shape().ring().box().centre()));
    Point at =
        points.isEmpty() || random.nextInt(3) == 0
            ? p(random.nextInt(700) - 150, random.nextInt(600) - 100)
            : points.get(random.nextInt(points.size()));
    Point near =
        at.plus(p(random.nextInt(30) - 15, random.nextInt(30) - 15).times(random.nextInt(2)));
    Point paper = desk.viewport().toPaper(near);
    return Pointer.on(desk.viewport(), paper.x(), paper.y(), random.nextInt(5) == 0);
  }

  private static Desk type(Desk desk, Random random, List<String> did) {
    List<Row> rows = FactsOf.desk(desk, WORDS).rows();
    if (rows.isEmpty()) {
      return desk;
    }
    Row row = rows.get(random.nextInt(rows.size()));
    Optional<UnaryOperator<Desk>> change = Optional.empty();
    try {
      switch (row) {
        case Row.Shown s -> {}
        case Row.Typed t -> {
          String text = TYPED.get(random.nextInt(TYPED.size()));
          did.add("type " + text + " in " + t.id());
          change = Optional.of(t.change().apply(text));
        }
        case Row.Choice c -> {
          int i = random.nextInt(c.options().size());
          did.add("choose " + i + " in " + c.id());
          change = Optional.of(c.change().apply(i));
        }
        case Row.Tick t -> {
          did.add("tick " + t.id());
          change = Optional.of(t.change().apply(!t.isOn()));
        }
      }
      return change.map(c -> c.apply(desk)).orElse(desk);
    } catch (BadFigure | LengthFormatException refused) {
      return desk;
    }
  }
}
