package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
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
 * @param crowded the slabs on which a label found no place
 * @param details the slabs whose labels and chains stand in a detail
 * @param parts the parts it is drawn in besides, without numbers then
 * @param loss how much worse than a perfect drawing it is; only to be compared
 */
record PlanOnPage(
    Field field,
    List<Mark> marks,
    List<Chains.Chain> unplaced,
    Set<String> crowded,
    List<String> details,
    Parts parts,
    double loss) {
  /** What a step down in scale costs against labels that find no good place. */
  private static final double STEP = 3;

  /** Labels that stand on other things cost at least this. */
  private static final double CROWDED = 20;

  /** A figure is about so long as a side of this length, millimetres. */
  private static final double SHORT = 20;

  /** What a detail costs: it is on another page. */
  private static final double DETAIL = 8;

  /**
   * The plan in a field of the page, with details or in parts where it is too crowded.
   *
   * @param room the field
   * @param page what a page has for a part
   */
  static PlanOnPage of(Facts facts, Box room, Box page) {
    PlanOnPage best = detailed(facts, room);
    if (best.crowded().isEmpty()) {
      return best;
    }
    PlanOnPage bare = best(facts, room, Style.withoutChains());
    if (bare.crowded().isEmpty()) {
      return bare;
    }
    double turn = best.field().view().turn();
    Parts parts = Parts.of(facts, turn, page);
    PlanOnPage key = best(facts, room, new Style(3.5, List.of(), parts, OptionalDouble.empty()));
    return key.loss() < best.loss() ? key : best;
  }

  private static PlanOnPage detailed(Facts facts, Box room) {
    PlanOnPage best = plain(facts, room);
    if (best.crowded().isEmpty()) {
      return best;
    }
    List<String> crowded =
        best.crowded().stream().filter(s -> DetailBlock.isLarger(facts, s, best.field())).toList();
    if (crowded.isEmpty()) {
      return best;
    }
    double turn = best.field().view().turn();
    PlanOnPage parted =
        best(facts, room, new Style(3.5, crowded, Parts.NONE, OptionalDouble.empty()));
    List<Chains.Chain> unplaced = new ArrayList<>(parted.unplaced());
    crowded.forEach(s -> unplaced.addAll(DetailBlock.unplaced(facts, s, turn)));
    double loss = parted.loss() + DETAIL * crowded.size();
    return loss >= best.loss()
        ? best
        : new PlanOnPage(
            parted.field(), parted.marks(), unplaced, parted.crowded(), crowded, Parts.NONE, loss);
  }

  /** A slab alone in a detail: without legend, scale bar and north mark. */
  static PlanOnPage detail(Facts facts, Box room, double turn) {
    return best(facts, room, new Style(3.5, List.of(), Parts.NONE, OptionalDouble.of(turn)));
  }

  private static PlanOnPage plain(Facts facts, Box room) {
    PlanOnPage best =
        best(facts, room, new Style(3.5, List.of(), Parts.NONE, OptionalDouble.empty()));
    if (best.crowded().isEmpty()) {
      return best;
    }
    PlanOnPage smaller =
        best(facts, room, new Style(3, List.of(), Parts.NONE, OptionalDouble.empty()));
    return smaller.loss() < best.loss() ? smaller : best;
  }

  /**
   * How a plan is drawn.
   *
   * @param number how high numbers are, millimetres
   * @param details the slabs whose labels and chains stand in a detail
   * @param parts the parts that hold the numbers instead; none where they stand here
   * @param bare whether crowded slabs may be left without any chain: the last resort before parts
   * @param turn how the plan lies that it is a detail of; empty for a plan that lies by itself,
   *     with legend, scale bar and north mark
   */
  private record Style(
      double number, List<String> details, Parts parts, boolean bare, OptionalDouble turn) {
    Style(double number, List<String> details, Parts parts, OptionalDouble turn) {
      this(number, details, parts, false, turn);
    }

    static Style withoutChains() {
      return new Style(3.5, List.of(), Parts.NONE, true, OptionalDouble.empty());
    }

    boolean isFurnished() {
      return turn.isEmpty();
    }

    List<Field> fields(Facts facts, Box room) {
      return turn.isEmpty()
          ? Field.of(facts.layout(), facts.scales(), room)
          : Field.of(facts.layout(), facts.scales(), room, turn.getAsDouble());
    }
  }

  private static PlanOnPage best(Facts facts, Box room, Style style) {
    PlanOnPage best = null;
    for (boolean strip :
        style.isFurnished() ? new boolean[] {false, true} : new boolean[] {false}) {
      double step = strip ? 0.5 : 0;
      Try way =
          new Try(
              room,
              strip ? Furniture.stripHeight(facts.plan(), facts.words(), room.width()) : 0,
              style);
      double before = Double.POSITIVE_INFINITY;
      for (Field field : style.fields(facts, way.box())) {
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

  /** A way of drawing: with a strip so high for the legend above the plan or none. */
  private record Try(Box room, double strip, Style style) {
    Box box() {
      return new Box(room.minX(), room.minY() + strip, room.maxX(), room.maxY());
    }
  }

  /**
   * Where labels find no place, without the chains of sides that lie on another slab’s, which stand
   * on their own slab, then without those of short sides of the slabs that the labels belong to, of
   * all slabs, and, where the style allows it, without any chain of those slabs: the column lists
   * these sides.
   */
  private static Optional<PlanOnPage> tried(Facts facts, Field field, Try way, double step) {
    Optional<PlanOnPage> best = tried(facts, field, way, step, c -> 0);
    Set<String> crowded = best.map(PlanOnPage::crowded).orElse(Set.of());
    List<ToDoubleFunction<Chains.Chain>> fewer =
        List.of(
            c -> facts.lettering().within().contains(c.tape()) ? Double.POSITIVE_INFINITY : 0,
            c -> crowded.contains(c.tape().slab()) ? SHORT : 0,
            c -> SHORT,
            c -> crowded.contains(c.tape().slab()) ? Double.POSITIVE_INFINITY : 0);
    for (ToDoubleFunction<Chains.Chain> least : fewer.subList(0, way.style().bare() ? 4 : 3)) {
      if (best.isPresent() && !best.get().crowded().isEmpty()) {
        PlanOnPage before = best.get();
        best =
            tried(facts, field, way, step, least)
                .filter(l -> l.loss() < before.loss())
                .or(() -> Optional.of(before));
      }
    }
    return best;
  }

  /**
   * With the legend in free ground, or in a strip of its own where there is one.
   *
   * @param least what has no chain on the plan where its side is shorter, millimetres
   */
  private static Optional<PlanOnPage> tried(
      Facts facts, Field field, Try way, double step, ToDoubleFunction<Chains.Chain> least) {
    Box room = way.room();
    View view = field.view();
    Ground ground = new Ground(way.box());
    Taken.lines(facts.plan(), view, Pens.PAPER, ground);
    List<Mark> marks = new ArrayList<>();
    Mark.Group drawing = PlanDrawing.of(facts.layout(), view, Pens.PAPER);
    marks.add(drawing);
    Style style = way.style();
    Facts here = facts.without(Set.copyOf(style.details()));
    style.parts().stand(view, ground);
    ChainPlacer chains = new ChainPlacer(here, view, ground, least);
    marks.add(new Mark.Group("chains", "", chains.place()));
    LabelPlacer labels = new LabelPlacer(here, view, ground, style.number());
    marks.add(new Mark.Group("letters", "", labels.letters()));
    boolean whole = style.parts().windows().isEmpty();
    marks.add(new Mark.Group("numbers", "", whole ? labels.numbers() : List.of()));
    marks.add(new Mark.Group("parts", "", style.parts().key(facts, view, ground)));
    marks.add(new Mark.Group("slabs", "", labels.names()));
    marks.add(new Mark.Group("beside", "", labels.besides()));
    marks.add(new Mark.Group("kept-clear", "", labels.zones()));
    marks.add(new Mark.Group("details", "", labels.details(style.details())));
    Furniture furniture = new Furniture(facts.plan(), facts.words(), field, Taken.tinted(drawing));
    if (way.strip() > 0) {
      Box top = new Box(room.minX(), room.minY(), room.maxX(), room.minY() + way.strip());
      marks.addAll(furniture.strip(top));
    } else if (style.isFurnished()) {
      Optional<List<Mark>> placed = furniture.place(ground);
      if (placed.isEmpty()) {
        return Optional.empty();
      }
      marks.addAll(placed.get());
    }
    double loss = step + 1.5 * chains.unplaced().size() + labels.loss();
    return Optional.of(
        new PlanOnPage(
            field,
            marks,
            chains.unplaced(),
            labels.crowded(),
            style.details(),
            style.parts(),
            loss));
  }
}
