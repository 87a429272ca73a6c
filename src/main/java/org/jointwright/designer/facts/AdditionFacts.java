package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.SetDown;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** What hangs on the hand until it is set down in a slab: a post or drain, or an opening. */
record AdditionFacts(Desk desk, Hold.HeldAddition held, Words words) {
  Facts facts() {
    Addition what = held.what();
    boolean isObject = what.kind().isPresent();
    List<Row> rows = new ArrayList<>();
    if (isObject) {
      List<FixedKind> kinds = Arrays.asList(FixedKind.values());
      rows.add(
          new Row.Choice(
              "fixed-kind",
              words.say("window.fixed.what"),
              kinds.stream().map(k -> FixedFacts.kind(k, words)).toList(),
              kinds.indexOf(what.kind().orElseThrow()),
              i -> changed(h -> h.of(kinds.get(i), FixedFacts.kind(kinds.get(i), words)))));
    }
    desk.plan().slab(held.slab()).ifPresent(s -> rows.addAll(fromSides(s)));
    if (isObject) {
      rows.add(
          FixedFacts.across(
              what.isSquare() ? List.of(what.wide(), what.deep()) : List.of(what.wide()),
              words,
              (d, sizes) -> SetDown.changed(d, h -> h.with(h.what().across(sizes)))));
    } else {
      rows.add(
          size(
              "opening-wide",
              "window.opening.wide",
              what.wide(),
              (h, v) -> grown(h, h.what().sized(v, h.what().deep()))));
      rows.add(
          size(
              "opening-deep",
              "window.opening.deep",
              what.deep(),
              (h, v) -> grown(h, h.what().sized(h.what().wide(), v))));
    }
    return Facts.saying(
        isObject ? held.called() : words.say("window.opening.title"),
        words.say("window.addition.kind"),
        rows,
        List.of(
            Deed.of("set-down", words.say("window.deed.setDown"), d -> SetDown.place(d, "")),
            Deed.of("stop-drawing", words.say("window.deed.putAway"), Desk::putAway)),
        List.of(words.say("window.addition.how")));
  }

  private List<Row> fromSides(Slab slab) {
    boolean isObject = held.what().kind().isPresent();
    List<SideOff> sides = SideOff.of(held, slab);
    List<Row> rows =
        new FromSides(desk.plan(), slab, words)
            .rows(
                isObject ? "fixed" : "opening",
                isObject ? "window.from.middle" : "window.from.edge",
                held.measured(),
                sides,
                d -> held.typed(),
                SetDown::push);
    List<Integer> offered = sides.stream().map(o -> o.number(slab)).toList();
    return rows.stream().map(r -> r instanceof Row.Typed t ? remembered(t, offered) : r).toList();
  }

  /** The row, and that its side was typed from. */
  private static Row remembered(Row.Typed row, List<Integer> offered) {
    int side = Integer.parseInt(row.id().substring(row.id().lastIndexOf('-') + 1));
    return new Row.Typed(
        row.id(),
        row.label(),
        row.value(),
        t -> {
          UnaryOperator<Desk> put = row.change().apply(t);
          return d -> SetDown.changed(put.apply(d), h -> h.from(side, offered));
        });
  }

  /** Another size of an opening, as far from the sides that were typed as it was. */
  private Hold.HeldAddition grown(Hold.HeldAddition now, Addition to) {
    Point by =
        desk.plan()
            .slab(now.slab())
            .map(s -> FromSides.held(s, SideOff.of(now, s), now.with(to).measured(), now.typed()))
            .orElse(new Point(0, 0));
    return now.with(to).at(now.slab(), now.at().plus(by));
  }

  /** How a size changes what is held. */
  private interface Sizing {
    Hold.HeldAddition of(Hold.HeldAddition held, double value);
  }

  private Row size(String id, String key, double now, Sizing sizing) {
    return new Row.Typed(
        id,
        words.say(key),
        words.print(Length.inches(now)),
        t ->
            d -> {
              double value = Figures.side(t, d).inches();
              return changed(h -> sizing.of(h, value)).apply(d);
            });
  }

  private static UnaryOperator<Desk> changed(UnaryOperator<Hold.HeldAddition> change) {
    return d -> SetDown.changed(d, change);
  }
}
