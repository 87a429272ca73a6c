package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.Thing;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The facts of a fixed object: what it is, how large, and how far from two sides. */
record FixedFacts(Desk desk, FixedObject object, Words words) {
  /** An outline that fills its box but for this lies level and plumb, square inches. */
  private static final double LEVEL = 1e-6;

  Facts facts() {
    List<Row> rows = new ArrayList<>();
    List<FixedKind> kinds = Arrays.asList(FixedKind.values());
    rows.add(
        new Row.Choice(
            "fixed-kind",
            words.say("window.fixed.what"),
            kinds.stream().map(this::kind).toList(),
            kinds.indexOf(object.kind()),
            i -> d -> replaced(d, named(d, kinds.get(i)), kinds.get(i), object.shape())));
    Slab slab = desk.plan().slab(object.slab()).orElseThrow();
    rows.addAll(
        new FromSides(desk.plan(), slab, words)
            .rows(
                "fixed",
                "window.from.middle",
                List.of(object.shape().ring().box().centre()),
                this::moved));
    sizes().ifPresent(now -> rows.add(across(now, words, this::sized)));
    // Last: a digit typed over the plan goes into the first figure.
    rows.add(
        new Row.Typed("fixed-name", words.say("window.slab.called"), object.id(), this::rename));
    return Facts.saying(
        object.id(),
        kind(object.kind()),
        rows,
        List.of(
            Deed.inMenu(
                "copy",
                words.say("window.deed.copy"),
                d -> Whole.copied(d, List.of(new Thing.Fixed(object.id())))),
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d -> d.edited(new FixedEdit.Remove(object.id())))),
        List.of());
  }

  /**
   * How large an object is, to be typed.
   *
   * @param now one figure of a round one, two of one with four sides; inches
   * @param change what other figures change
   */
  static Row across(List<Double> now, Words words, BiFunction<Desk, List<Double>, Desk> change) {
    List<String> said = now.stream().map(i -> words.print(Length.inches(i))).toList();
    return new Row.Typed(
        "fixed-across",
        words.say("window.fixed.across"),
        said.size() > 1
            ? words.say("window.fixed.bothWays", said.getFirst(), said.getLast())
            : said.getFirst(),
        t -> d -> change.apply(d, Figures.across(t, d)));
  }

  /** How large it is; empty where two figures do not tell. */
  private Optional<List<Double>> sizes() {
    Box box = object.shape().ring().box();
    return switch (object.shape()) {
      case FixedShape.Round round -> Optional.of(List.of(round.diameter().inches()));
      case FixedShape.Outlined o ->
          Math.abs(o.ring().area() - box.width() * box.height()) < LEVEL
              ? Optional.of(List.of(box.width(), box.height()))
              : Optional.empty();
    };
  }

  private Desk sized(Desk d, List<Double> sizes) {
    Addition as = Addition.OBJECT.across(sizes);
    FixedShape to = as.shape(object.shape().ring().box().centre());
    FixedShape shape =
        switch (object.shape()) {
          case FixedShape.Round was when to instanceof FixedShape.Round r ->
              new FixedShape.Round(was.at(), r.diameter(), was.kept());
          case FixedShape.Outlined was when to instanceof FixedShape.Outlined o ->
              new FixedShape.Outlined(o.outline(), was.kept());
          default -> to;
        };
    return replaced(d, object.id(), object.kind(), shape);
  }

  private Desk moved(Desk d, Point by) {
    return d.edited(new FixedEdit.Move(object.id(), by));
  }

  private UnaryOperator<Desk> rename(String text) {
    String name = text.strip();
    if (name.isEmpty()) {
      throw new BadFigure("window.figure.noName");
    }
    return d -> {
      if (!name.equals(object.id()) && d.plan().fixedObject(name).isPresent()) {
        throw new BadFigure("window.figure.nameTaken", name);
      }
      return name.equals(object.id()) ? d : replaced(d, name, object.kind(), object.shape());
    };
  }

  /** Its name once it is of another kind: the one that it was given goes with the kind. */
  private String named(Desk d, FixedKind kind) {
    boolean isGiven =
        kind != object.kind() && object.id().matches(Pattern.quote(kind(object.kind())) + " \\d+");
    return isGiven ? Addition.freeName(d.plan(), kind(kind)) : object.id();
  }

  private Desk replaced(Desk d, String name, FixedKind kind, FixedShape shape) {
    FixedObject now = new FixedObject(name, object.slab(), kind, shape, object.kept());
    List<Edit> edits = List.of(new FixedEdit.Remove(object.id()), new FixedEdit.Add(now));
    return d.edited(new Together(edits)).picking(new Pick.AtFixed(name));
  }

  private String kind(FixedKind kind) {
    return kind(kind, words);
  }

  /** What an object of a kind is called. */
  static String kind(FixedKind kind, Words words) {
    return switch (kind) {
      case POST -> words.say("window.fixed.post");
      case COLUMN -> words.say("window.fixed.column");
      case DRAIN -> words.say("window.fixed.drain");
      case CLEANOUT -> words.say("window.fixed.cleanout");
      case HYDRANT -> words.say("window.fixed.hydrant");
      case TREE -> words.say("window.fixed.tree");
      case OTHER -> words.say("window.fixed.other");
    };
  }
}
