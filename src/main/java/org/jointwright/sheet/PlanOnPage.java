package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.View;
import org.jointwright.shape.Box;
import org.jointwright.sheet.place.Field;
import org.jointwright.sheet.place.Furniture;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Taken;

/**
 * The plan with its chains, letters and numbers in a field of the page.
 *
 * @param field how it lies there
 * @param marks what is drawn
 * @param unplaced the sides whose chains found no place
 * @param loss how much worse than a perfect drawing it is; only to be compared
 */
record PlanOnPage(Field field, List<Mark> marks, List<Chains.Chain> unplaced, double loss) {
  /** What a step down in scale costs against labels that find no good place. */
  private static final double STEP = 3;

  /** Labels that stand on other things cost at least this. */
  private static final double CROWDED = 20;

  static PlanOnPage of(Facts facts, Box room) {
    PlanOnPage best = best(facts, room, 3.5);
    if (best.loss() < CROWDED) {
      return best;
    }
    PlanOnPage smaller = best(facts, room, 3);
    return smaller.loss() < best.loss() ? smaller : best;
  }

  private static PlanOnPage best(Facts facts, Box room, double number) {
    PlanOnPage best = null;
    for (boolean strip : new boolean[] {false, true}) {
      double step = strip ? 0.5 : 0;
      Try way =
          new Try(
              room,
              strip ? Furniture.stripHeight(facts.plan(), facts.words(), room.width()) : 0,
              number);
      double before = Double.POSITIVE_INFINITY;
      for (Field field : Field.of(facts.layout(), facts.words().units(), way.box())) {
        if (best != null && best.loss() <= step) {
          break;
        }
        Optional<PlanOnPage> next = tried(facts, field, way, step);
        if (next.isPresent() && next.get().loss() > before + CROWDED) {
          // Smaller still would only be more crowded.
          break;
        }
        before = next.map(PlanOnPage::loss).orElse(before);
        if (next.isPresent() && (best == null || next.get().loss() < best.loss())) {
          best = next.get();
        }
        step += STEP;
      }
    }
    return Objects.requireNonNull(best);
  }

  /**
   * A way of drawing: with a strip so high for the legend above the plan or none, numbers so high.
   */
  private record Try(Box room, double strip, double number) {
    Box box() {
      return new Box(room.minX(), room.minY() + strip, room.maxX(), room.maxY());
    }
  }

  /** With the legend in free ground, or in a strip of its own where there is one. */
  private static Optional<PlanOnPage> tried(Facts facts, Field field, Try way, double step) {
    Box room = way.room();
    View view = field.view();
    Ground ground = new Ground(way.box());
    Taken.lines(facts.plan(), view, Pens.PAPER, ground);
    List<Mark> marks = new ArrayList<>();
    Mark.Group drawing = PlanDrawing.of(facts.layout(), view, Pens.PAPER);
    marks.add(drawing);
    ChainPlacer chains = new ChainPlacer(facts, view, ground);
    marks.add(new Mark.Group("chains", "", chains.place()));
    LabelPlacer labels = new LabelPlacer(facts, view, ground, way.number());
    marks.add(new Mark.Group("letters", "", labels.letters()));
    marks.add(new Mark.Group("numbers", "", labels.numbers()));
    marks.add(new Mark.Group("slabs", "", labels.names()));
    marks.add(new Mark.Group("beside", "", labels.besides()));
    marks.add(new Mark.Group("kept-clear", "", labels.zones()));
    Furniture furniture = new Furniture(facts.plan(), facts.words(), field, Taken.tinted(drawing));
    if (way.strip() > 0) {
      Box top = new Box(room.minX(), room.minY(), room.maxX(), room.minY() + way.strip());
      marks.addAll(furniture.strip(top));
    } else {
      Optional<List<Mark>> placed = furniture.place(ground);
      if (placed.isEmpty()) {
        return Optional.empty();
      }
      marks.addAll(placed.get());
    }
    double loss = step + 1.5 * chains.unplaced().size() + labels.loss();
    return Optional.of(new PlanOnPage(field, marks, chains.unplaced(), loss));
  }
}
