package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.ready.ReadySize;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.SetDown;
import org.jointwright.measure.Length;
import org.jointwright.text.Words;

/** The sizes of a ready shape in the hand. */
record ReadyFacts(Desk desk, Hold.HeldShape held, Words words) {
  private static final double QUARTER = 90;

  Facts facts() {
    ReadyShape shape = held.shape();
    List<ReadyKind> kinds = Arrays.asList(ReadyKind.values());
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row.Choice(
            "ready-kind",
            words.say("window.ready.kind"),
            kinds.stream().map(k -> words.say("window.ready.kind." + k.word())).toList(),
            kinds.indexOf(shape.kind()),
            i -> d -> SetDown.changed(d, another(d, kinds.get(i)))));
    for (int i = 0; i < shape.kind().sizes().size(); i++) {
      rows.add(size(i));
    }
    rows.add(
        new Row.Typed(
            "ready-turned",
            words.say("window.ready.turned"),
            degrees(shape.turned()),
            t -> changed(s -> s.withTurned(Figures.degrees(t, -360, 360)))));
    if (shape.kind().hasSides()) {
      rows.add(
          new Row.Tick(
              "ready-mirrored",
              words.say("window.ready.mirrored"),
              shape.isMirrored(),
              on -> changed(s -> s.withMirrored(on))));
    }
    return Facts.saying(
        words.say("window.ready.title"),
        words.say("window.kind.slab"),
        rows,
        List.of(
            Deed.of(
                "set-down",
                words.say("window.deed.setDown"),
                d -> SetDown.place(d, words.say("window.slab.name"))),
            Deed.of(
                "quarter-turn",
                words.say("window.deed.quarterTurn"),
                changed(s -> s.withTurned(s.turned() + QUARTER))),
            Deed.of("stop-drawing", words.say("window.deed.stopDrawing"), Desk::putAway)),
        List.of(words.say("window.ready.how"), words.say("window.draft.free")));
  }

  private static ReadyShape another(Desk d, ReadyKind kind) {
    return ReadyShape.usual(kind, d.plan().unit().isMetric());
  }

  private Row size(int i) {
    ReadySize size = held.shape().kind().sizes().get(i);
    double now = held.shape().sizes().get(i);
    Function<String, UnaryOperator<Desk>> change =
        t ->
            d -> {
              double value =
                  size.isAngle()
                      ? Figures.degrees(t, size.least(), size.most())
                      : Figures.site(t, d).inches();
              if (!size.allows(value)) {
                throw new BadFigure("window.figure.none");
              }
              return changed(s -> s.with(i, value)).apply(d);
            };
    return new Row.Typed(
        "ready-" + size.name(),
        words.say("window.ready.size." + size.name()),
        size.isAngle() ? degrees(now) : words.print(Length.inches(now)),
        change);
  }

  private String degrees(double value) {
    return words.say("window.degrees", value);
  }

  private UnaryOperator<Desk> changed(UnaryOperator<ReadyShape> change) {
    return d ->
        d.hand()
            .shape()
            .map(
                h -> {
                  ReadyShape next = change.apply(h.shape());
                  if (next.at(h.pencil().at()).isEmpty()) {
                    throw new BadFigure("window.figure.noShape");
                  }
                  return SetDown.changed(d, next);
                })
            .orElse(d);
  }
}
