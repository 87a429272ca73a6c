package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Things;
import org.jointwright.measure.Length;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** What can be done with whole things: one, or several that are picked together. */
record WholeFacts(Desk desk, List<Thing> things, Words words) {
  private static final double MOST_TURN = 360;

  /** The facts of several. */
  Facts facts() {
    List<Deed> deeds = new ArrayList<>(deeds());
    deeds.add(
        Deed.of("take-out", words.say("window.deed.takeOut"), d -> Whole.takenOut(d, things)));
    String names =
        things.stream().map(t -> Names.thing(t, words)).collect(Collectors.joining(", "));
    return Facts.saying(
        words.say("window.thing.several", things.size()),
        words.say("window.kind.several"),
        rows(),
        deeds,
        List.of(names, words.say("window.several.how")));
  }

  /** Moves and turns, typed. */
  List<Row> rows() {
    return List.of(
        moved("move-right", "window.whole.right", new Point(1, 0)),
        moved("move-up", "window.whole.up", new Point(0, 1)),
        new Row.Typed(
            "turn-by",
            words.say("window.whole.turn"),
            words.say("window.degrees", 0),
            t ->
                d ->
                    Whole.turned(d, things, Figures.degrees(t, -MOST_TURN, MOST_TURN))
                        .orElseThrow(WholeFacts::noRoom)
                        .picking(Things.pick(things))));
  }

  private Row moved(String id, String key, Point way) {
    return new Row.Typed(
        id,
        words.say(key),
        words.print(Length.inches(0)),
        t ->
            d ->
                Whole.put(d, things, Motion.by(way.times(Figures.way(t, d).inches())))
                    .orElseThrow(WholeFacts::noRoom)
                    .picking(Things.pick(things)));
  }

  private static BadFigure noRoom() {
    return new BadFigure("window.figure.leaves");
  }

  /** Copies, mirrors, joins. */
  List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    boolean areSeveral = things.size() > 1;
    deeds.add(
        new Deed(
            "copy",
            words.say("window.deed.copy"),
            new Deed.OnDesk(d -> Whole.copied(d, things)),
            !areSeveral));
    deeds.add(Deed.inMenu("mirror-sideways", words.say("window.deed.mirror"), mirrored(true)));
    deeds.add(Deed.inMenu("mirror-up", words.say("window.deed.mirrorUp"), mirrored(false)));
    for (List<String> two : joinable()) {
      deeds.add(
          new Deed(
              "join-" + two.getLast(),
              words.say("window.deed.join", two.getLast()),
              new Deed.OnDesk(d -> Whole.joined(d, two.getFirst(), two.getLast())),
              !areSeveral));
    }
    return deeds;
  }

  private UnaryOperator<Desk> mirrored(boolean isSideways) {
    return d ->
        Whole.mirrored(d, things, isSideways).map(x -> x.picking(Things.pick(things))).orElse(d);
  }

  /** The slab and each that it can be joined with; of several only where they are two slabs. */
  private List<List<String>> joinable() {
    List<String> slabs =
        things.stream()
            .flatMap(t -> t instanceof Thing.WholeSlab s ? Stream.of(s.id()) : Stream.empty())
            .toList();
    if (slabs.isEmpty() || slabs.size() != things.size() || slabs.size() > 2) {
      return List.of();
    }
    String first = slabs.getFirst();
    return desk.plan().slabs().stream()
        .map(Slab::id)
        .filter(id -> slabs.size() == 1 || slabs.getLast().equals(id))
        .filter(id -> Whole.canJoin(desk.plan(), first, id))
        .map(id -> List.of(first, id))
        .toList();
  }
}
