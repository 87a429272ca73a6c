package org.jointwright.designer.facts;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.measure.Length;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Use;
import org.jointwright.plan.edit.FeatureEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.text.Words;

/** The facts of something marked on a side: what it is, and from where to where it runs. */
record FeatureFacts(Desk desk, Pick.AtFeature pick, Words words) {
  /** What a typed distance may go past the end of its side by rounding, inches. */
  static final double PAST = 0.5;

  /** How much of a side a new mark takes at first, and at most, inches: a door for one car. */
  private static final double SHARE = 0.5;

  private static final double WIDEST = 108;

  /** A door for people with its frame, inches; common practice, no source. */
  private static final double HOUSE_DOOR = 36;

  Optional<Facts> facts() {
    Optional<Edge> edge = Picks.edge(desk.plan(), pick.edge());
    return edge.flatMap(e -> Picks.feature(desk.plan(), pick).map(f -> facts(e, f)));
  }

  private Facts facts(Edge edge, Feature feature) {
    Names names = new Names(desk.plan(), words);
    String first = names.first(edge);
    List<FeatureKind> kinds = Arrays.asList(FeatureKind.values());
    List<Row> rows =
        List.of(
            new Row.Choice(
                "feature-kind",
                words.say("window.feature.what"),
                kinds.stream().map(k -> kind(k, words)).toList(),
                kinds.indexOf(feature.kind()),
                i -> changed(f -> new Feature(kinds.get(i), f.from(), f.to(), f.kept()))),
            typed(
                "feature-from",
                words.say("window.feature.from", first),
                feature.from(),
                edge,
                (f, at) -> of(f, at, f.to())),
            typed(
                "feature-to",
                words.say("window.feature.to", first),
                feature.to(),
                edge,
                (f, at) -> of(f, f.from(), at)));
    return Facts.saying(
        names.side(edge),
        kind(feature.kind(), words),
        rows,
        List.of(
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d ->
                    d.edited(new FeatureEdit.Remove(pick.edge(), pick.feature()))
                        .picking(new Pick.AtEdge(pick.edge())))),
        List.of(words.say("window.feature.why")));
  }

  private interface Placed {
    Feature at(Feature feature, double inches);
  }

  private Row typed(String id, String label, double value, Edge edge, Placed placed) {
    Function<String, UnaryOperator<Desk>> change =
        t ->
            d -> {
              double at = Figures.site(t, d).inches();
              if (at > edge.length() + PAST) {
                throw new BadFigure("window.figure.pastSide", Length.inches(edge.length()));
              }
              return changed(f -> placed.at(f, Math.min(at, edge.length()))).apply(d);
            };
    return new Row.Typed(id, label, words.print(Length.inches(value)), change);
  }

  private static Feature of(Feature feature, double from, double to) {
    if (to - from < Feature.SHORTEST) {
      throw new BadFigure("window.figure.backwards");
    }
    return new Feature(feature.kind(), from, to, feature.kept());
  }

  private UnaryOperator<Desk> changed(UnaryOperator<Feature> change) {
    return d ->
        Picks.feature(d.plan(), pick)
            .map(
                f ->
                    d.edited(new FeatureEdit.Change(pick.edge(), pick.feature(), change.apply(f)))
                        .picking(pick))
            .orElse(d);
  }

  /** The desk with a door marked in the middle of a side, to be put in its place. */
  static Desk added(Desk desk, Ref side) {
    Edge edge = Picks.edge(desk.plan(), side).orElseThrow();
    boolean isForPeople =
        edge.length() < WIDEST
            || desk.plan().slab(side.slab()).filter(s -> s.use() == Use.FOOT).isPresent();
    FeatureKind kind = isForPeople ? FeatureKind.DOOR : FeatureKind.GARAGE_DOOR;
    double wide =
        isForPeople && edge.length() >= HOUSE_DOOR
            ? HOUSE_DOOR
            : Math.min(WIDEST, Math.rint(SHARE * edge.length()));
    double from = Math.rint((edge.length() - wide) / 2);
    Feature feature = new Feature(kind, from, from + wide, Kept.NOTHING);
    int number = EdgeFacts.setting(desk.plan(), side).features().size();
    return desk.edited(new FeatureEdit.Add(side, feature))
        .picking(new Pick.AtFeature(side, number));
  }

  static String kind(FeatureKind kind, Words words) {
    return switch (kind) {
      case GARAGE_DOOR -> words.say("window.feature.garageDoor");
      case DOOR -> words.say("window.feature.door");
      case STEP -> words.say("window.feature.step");
      case WALK -> words.say("window.feature.walk");
      case OTHER -> words.say("window.feature.other");
    };
  }
}
