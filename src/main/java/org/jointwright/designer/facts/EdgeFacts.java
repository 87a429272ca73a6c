package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.jointwright.designer.shaping.SharedSide;
import org.jointwright.designer.shaping.Shifted;
import org.jointwright.designer.shaping.SideLength;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.joint.EdgeSection;
import org.jointwright.joint.Meeting;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** The facts of an edge: its length, what it is against, whether the slab floats there. */
record EdgeFacts(Desk desk, Ref edge, Words words) {
  /** Nearer to level or plumb than this a side is one of them: sine of the angle. */
  private static final double SLANT = 1e-6;

  /** A side of which no more is free lies along a slab wholly, inches. */
  private static final double WHOLLY = 1;

  Optional<Facts> facts() {
    return Picks.outline(desk.plan(), edge)
        .filter(o -> edge.index() < o.vertices().size())
        .map(this::facts);
  }

  private Facts facts(Outline outline) {
    Edge e = outline.ring().edges().get(edge.index());
    EdgeSetting setting = setting(desk.plan(), edge);
    List<Row> rows = new ArrayList<>();
    rows.add(length(e));
    rows.add(bulge(e));
    if (e instanceof Arc arc) {
      rows.add(radius(arc));
    }
    List<Against> all = Arrays.asList(Against.values());
    rows.add(
        new Row.Choice(
            "edge-against",
            words.say("window.edge.against"),
            all.stream().map(a -> against(a, e)).toList(),
            all.indexOf(setting.against()),
            i -> set(a -> a.withAgainst(all.get(i)))));
    if (setting.against().needsIsolation()) {
      rows.add(
          new Row.Tick(
              "edge-floats",
              words.say("window.edge.floats"),
              setting.floats(),
              on -> set(a -> a.withFloats(on))));
    }
    rows.addAll(thickened(setting));
    List<String> why = new ArrayList<>();
    if (setting.against().needsIsolation()) {
      why.add(words.say(setting.floats() ? "window.edge.whyFloats" : "window.edge.whyHeld"));
    }
    why.addAll(shifted(desk, edge.slab(), words));
    Names names = new Names(desk.plan(), words);
    String kind = e instanceof Segment ? "window.kind.side" : "window.kind.arc";
    return Facts.saying(names.side(e), words.say(kind), rows, deeds(e), why);
  }

  /** Whether the slab is thicker along it, and if so how thick and how far in. */
  private List<Row> thickened(EdgeSetting setting) {
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row.Tick(
            "edge-thickened",
            words.say("window.edge.thickened"),
            setting.thickened().isPresent(),
            on -> set(a -> a.withThickened(on ? Optional.of(Thickened.USUAL) : Optional.empty()))));
    if (setting.thickened().isEmpty()) {
      return rows;
    }
    Thickened thick = setting.thickened().get();
    Slab slab = desk.plan().slab(edge.slab()).orElseThrow();
    rows.add(
        new Row.Typed(
            "edge-depth",
            words.say("window.edge.depth"),
            words.print(EdgeSection.depth(thick, slab)),
            t -> d -> thickened(thick.withDepth(Figures.thickness(t, d))).apply(d)));
    rows.add(
        new Row.Typed(
            "edge-over",
            words.say("window.edge.over"),
            words.print(EdgeSection.over(thick)),
            t -> d -> thickened(thick.withOver(Figures.taper(t, d))).apply(d)));
    return rows;
  }

  private UnaryOperator<Desk> thickened(Thickened value) {
    return set(a -> a.withThickened(Optional.of(value)));
  }

  private Row length(Edge e) {
    String value = words.print(Length.inches(e.length()));
    String label = words.say("window.edge.length");
    return e instanceof Segment
        ? new Row.Typed(
            "edge-length",
            label,
            value,
            t -> d -> SideLength.set(d, edge, Figures.side(t, d)).orElseThrow(EdgeFacts::cannot))
        : new Row.Shown("edge-length", label, value);
  }

  /** The other way to take a length that was just typed. */
  static Optional<Deed> otherLength(Desk desk, Ref edge, Words words) {
    return SideLength.other(desk, edge)
        .map(
            o -> {
              int known = o.name().isEmpty() ? 0 : 1;
              String said =
                  switch (o.way()) {
                    case NEXT_SIDE -> words.say("window.deed.lengthSide", known, o.name());
                    case CORNER_ALONE -> words.say("window.deed.lengthCorner", known, o.name());
                  };
              return Deed.of("other-length-" + edge.index(), said, d -> o.desk());
            });
  }

  /** What else the length that was just typed changed: where objects stand from a side. */
  static List<String> shifted(Desk desk, String slab, Words words) {
    Names names = new Names(desk.plan(), words);
    return toBeSeen(desk, slab, words).stream()
        .map(
            s ->
                words.say(
                    "window.edge.shifted",
                    s.object().id(),
                    Length.inches(s.now().away()),
                    names.ends(s.now().side()),
                    Length.inches(s.was().away())))
        .toList();
  }

  /** Those whose figure is another: what is too little to print is nothing to say. */
  private static List<Shifted> toBeSeen(Desk desk, String slab, Words words) {
    return Shifted.last(desk, slab).stream()
        .filter(
            s ->
                !words
                    .print(Length.inches(s.was().away()))
                    .equals(words.print(Length.inches(s.now().away()))))
        .toList();
  }

  /** To have them as far from it as they were. */
  static List<Deed> shiftedBack(Desk desk, String slab, Words words) {
    List<Shifted> all = toBeSeen(desk, slab, words);
    return IntStream.range(0, all.size())
        .mapToObj(
            i ->
                Deed.of(
                    "shift-back-" + i,
                    words.say(
                        "window.deed.shiftBack",
                        all.get(i).object().id(),
                        Length.inches(all.get(i).was().away())),
                    d -> all.get(i).back(d)))
        .toList();
  }

  /** How far it bulges; a minus before the figure turns it to the other side. */
  private Row bulge(Edge e) {
    double now = SideShape.bulge(e);
    boolean isIn = now < -0.01;
    return new Row.Typed(
        "edge-bulge",
        words.say(isIn ? "window.edge.bulgesIn" : "window.edge.bulgesOut"),
        words.print(Length.inches(Math.abs(now))),
        t ->
            d -> {
              double typed = Figures.way(t, d).inches();
              return SideShape.bulging(d, edge, isIn ? -typed : typed, false)
                  .orElseThrow(() -> new BadFigure("window.figure.bulge"))
                  .picking(new Pick.AtEdge(edge));
            });
  }

  private Row radius(Arc arc) {
    return new Row.Typed(
        "edge-radius",
        words.say("window.edge.radius"),
        words.print(Length.inches(arc.radius())),
        t ->
            d ->
                SideShape.ofRadius(d, edge, Figures.side(t, d).inches())
                    .orElseThrow(() -> new BadFigure("window.figure.radius"))
                    .picking(new Pick.AtEdge(edge)));
  }

  private static BadFigure cannot() {
    return new BadFigure("window.figure.cannot");
  }

  private UnaryOperator<Desk> set(UnaryOperator<EdgeSetting> change) {
    return d ->
        d.edited(new SlabEdit.SetEdge(edge, change.apply(setting(d.plan(), edge))))
            .picking(new Pick.AtEdge(edge));
  }

  private List<Deed> deeds(Edge e) {
    List<Deed> deeds = new ArrayList<>();
    otherLength(desk, edge, words).ifPresent(deeds::add);
    deeds.addAll(shiftedBack(desk, edge.slab(), words));
    SharedSide.other(desk, edge)
        .map(
            o ->
                Deed.of(
                    "other-push",
                    words.say(
                        o.isAlone() ? "window.deed.pushAlone" : "window.deed.pushWith",
                        String.join(", ", o.names())),
                    d -> o.desk()))
        .ifPresent(deeds::add);
    deeds.add(
        Deed.of(
            "add-corner",
            words.say("window.deed.addCorner"),
            d -> SideShape.cornerOn(d, edge, e.at(0.5))));
    if (e instanceof Arc) {
      deeds.add(
          SideShape.isRounding(desk.plan(), edge)
              ? Deed.of(
                  "sharpen",
                  words.say("window.deed.sharpen"),
                  d -> SideShape.sharpened(d, edge).map(x -> x.picking(Pick.NOTHING)).orElse(d))
              : Deed.of(
                  "straighten",
                  words.say("window.deed.straighten"),
                  d -> SideShape.bulging(d, edge, 0, false).orElse(d)));
    } else if (edge.ring() == Ref.OUTLINE && isSlanted(e)) {
      deeds.add(Deed.inMenu("level", words.say("window.deed.level"), d -> Whole.levelled(d, edge)));
    }
    if (e.length() >= 2 * Feature.SHORTEST) {
      deeds.add(
          Deed.of(
              "add-feature",
              words.say("window.deed.addFeature"),
              d -> FeatureFacts.added(d, edge)));
    }
    List<Feature> features = setting(desk.plan(), edge).features();
    for (int i = 0; i < features.size(); i++) {
      Pick.AtFeature pick = new Pick.AtFeature(edge, i);
      Feature f = features.get(i);
      String label =
          words.say(
              "window.deed.toFeature",
              FeatureFacts.kind(f.kind(), words),
              Length.inches(f.from()),
              Length.inches(f.to()));
      deeds.add(Deed.of("feature-" + (i + 1), label, d -> d.picking(pick)));
    }
    return deeds;
  }

  private static boolean isSlanted(Edge e) {
    Point way = e.direction(0);
    return Math.min(Math.abs(way.x()), Math.abs(way.y())) > SLANT;
  }

  private String against(Against against, Edge e) {
    return switch (against) {
      case OPEN -> beside(e).orElseGet(() -> words.say("window.against.open"));
      case BUILDING -> words.say("window.against.building");
      case CONCRETE -> words.say("window.against.concrete");
      case STREET -> words.say("window.against.street");
      case ASPHALT -> words.say("window.against.asphalt");
    };
  }

  /** The slab of the plan that the side lies along, the one it is longest along. */
  private Optional<String> beside(Edge e) {
    if (edge.ring() != Ref.OUTLINE) {
      return Optional.empty();
    }
    Map<String, Double> along = new LinkedHashMap<>();
    for (Meeting m : Meeting.of(desk.plan())) {
      if (m.first().equals(edge.slab()) && m.firstEdge() == edge.index()) {
        along.merge(m.second(), m.stretch().length(), Double::sum);
      } else if (m.second().equals(edge.slab()) && m.secondEdge() == edge.index()) {
        along.merge(m.first(), m.stretch().length(), Double::sum);
      }
    }
    double all = along.values().stream().mapToDouble(d -> d).sum();
    return along.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(
            longest -> {
              String slab = called(longest.getKey());
              return all < e.length() - WHOLLY ? words.say("window.against.partly", slab) : slab;
            });
  }

  /** A slab that has no name of its own is called slab 1 already. */
  private String called(String slab) {
    return slab.startsWith(words.say("window.slab.name"))
        ? slab
        : words.say("window.against.slab", slab);
  }

  static EdgeSetting setting(Plan plan, Ref edge) {
    Slab slab = plan.slab(edge.slab()).orElseThrow();
    return edge.ring() == Ref.OUTLINE
        ? slab.edge(edge.index())
        : slab.openings().get(edge.ring()).edge(edge.index());
  }
}
