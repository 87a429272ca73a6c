package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jointwright.app.Sides;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.state.AlongSides;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.InHand;
import org.jointwright.measure.Length;
import org.jointwright.shape.Edge;
import org.jointwright.text.Words;

/** What can be said while something is drawn. */
record DraftFacts(Desk desk, Draft draft, Words words) {
  Facts facts() {
    return Facts.saying(words.say(title()), words.say(kind()), rows(), deeds(), said());
  }

  private List<Row> rows() {
    return draft.what() == Drawn.STRIP
        ? List.of(
            new Row.Typed(
                "strip-wide",
                words.say("window.draft.wide"),
                words.print(Length.inches(draft.wide())),
                t ->
                    d ->
                        d.draft()
                            .map(x -> x.withWide(Figures.side(t, d).inches()))
                            .map(x -> d.withHand(InHand.drawing(x)))
                            .orElse(d)))
        : hasTwoEnds() ? place() : List.of();
  }

  private boolean hasTwoEnds() {
    return draft.what().isLine() && draft.what() != Drawn.STRIP;
  }

  /** On which side the line starts, or ends, and how far along it. */
  private List<Row> place() {
    List<Edge> sides = AlongSides.of(desk.plan());
    if (sides.isEmpty()) {
      return List.of();
    }
    OptionalInt on =
        draft
            .pencil()
            .filter(p -> !AlongSides.isAtLast(draft, p))
            .map(p -> AlongSides.side(sides, p))
            .orElseGet(OptionalInt::empty);
    int chosen = on.orElseGet(() -> draft.last().map(l -> AlongSides.across(sides, l)).orElse(0));
    Edge side = sides.get(chosen);
    String where = draft.last().isEmpty() ? "window.draft.fromSide" : "window.draft.toSide";
    String far =
        on.isPresent()
            ? words.print(Length.inches(AlongSides.along(side, draft.pencil().orElseThrow().at())))
            : "";
    return List.of(
        new Row.Choice(
            "line-side",
            words.say(where),
            Sides.letters(desk.plan(), sides),
            chosen,
            i -> d -> AlongSides.led(d, sides.get(i), sides.get(i).length() / 2)),
        new Row.Typed(
            "line-along",
            words.say("window.draft.along", new Names(desk.plan(), words).first(side)),
            far,
            t -> d -> led(d, side, Figures.site(t, d).inches())));
  }

  private static Desk led(Desk desk, Edge side, double inches) {
    if (inches > side.length() + FeatureFacts.PAST) {
      throw new BadFigure("window.figure.pastSide", Length.inches(side.length()));
    }
    return AlongSides.led(desk, side, inches);
  }

  private List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    if (draft.what() == Drawn.STRIP && draft.line().isPresent()) {
      deeds.add(
          Deed.of(
              "end-strip",
              words.say("window.deed.endStrip"),
              d -> Drafting.enter(d, new Said.Silent(), words.say("window.slab.name"))));
    }
    if (hasTwoEnds() && AlongSides.isReady(desk)) {
      deeds.add(
          Deed.of(
              "set-end",
              words.say(draft.last().isEmpty() ? "window.deed.startHere" : "window.deed.endHere"),
              d -> Drafting.enter(d, new Said.Silent(), words.say("window.slab.name"))));
    }
    deeds.add(Deed.of("stop-drawing", words.say("window.deed.stopDrawing"), Desk::putAway));
    return deeds;
  }

  private String title() {
    return switch (draft.what()) {
      case STRIP -> "window.draft.strip";
      case SLAB -> "window.draft.title";
      case ZONE -> "window.draft.zone";
      case OLD_JOINT -> "window.draft.oldJoint";
      case SPLIT -> "window.draft.split";
      case JOINT -> "window.draft.joint";
    };
  }

  private String kind() {
    return switch (draft.what()) {
      case SLAB, STRIP, SPLIT -> "window.kind.slab";
      case JOINT -> "window.kind.contraction";
      case ZONE -> "window.kind.zone";
      case OLD_JOINT -> "window.kind.given";
    };
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    switch (draft.what()) {
      case STRIP -> {
        said.add(words.say("window.draft.stripWhy"));
        said.add(words.say("window.draft.typeLine"));
      }
      case SLAB -> {
        said.add(words.say("window.draft.click"));
        said.add(words.say("window.draft.type"));
      }
      case ZONE -> {
        said.add(words.say("window.draft.zoneWhy"));
        said.add(words.say("window.draft.click"));
        said.add(words.say("window.draft.type"));
      }
      case JOINT -> said.add(words.say("window.draft.jointWhy"));
      case SPLIT -> said.add(words.say("window.draft.splitWhy"));
      case OLD_JOINT -> said.add(words.say("window.draft.oldJointWhy"));
    }
    if (hasTwoEnds()) {
      said.add(words.say("window.draft.byFigure"));
    }
    said.add(words.say("window.draft.back"));
    said.add(words.say("window.draft.free"));
    return said;
  }
}
