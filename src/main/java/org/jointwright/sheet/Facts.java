package org.jointwright.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Section;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;

/**
 * What a cut sheet tells, before anything is placed.
 *
 * @param layout the layout
 * @param words the reader's words
 * @param lettering corners and tapes
 * @param numbering joints and box-outs
 * @param runs the joints as their rows tell them, by number
 * @param chains the running marks of each side
 * @param ties the diagonals
 * @param open the rules that the layout breaks, one for each finding
 * @param scales the scales it may be drawn at, the largest drawing first
 */
record Facts(
    Layout layout,
    Words words,
    Lettering lettering,
    Numbering numbering,
    Map<Integer, Finder.Run> runs,
    List<Chains.Chain> chains,
    Ties ties,
    List<String> open,
    List<Scale> scales) {
  static Facts of(Layout layout, SheetOptions options) {
    Words words = options.words();
    Plan plan = layout.plan();
    Lettering lettering = Lettering.of(plan);
    Numbering numbering = Numbering.of(plan);
    Map<Integer, Finder.Run> runs = Finder.runs(plan, lettering, numbering);
    return new Facts(
        layout,
        words,
        lettering,
        numbering,
        runs,
        Chains.of(lettering, runs, numbering),
        Ties.of(plan, lettering, words.rounding()),
        options.open(),
        Scale.series(words.units(), options.paper().type()));
  }

  /** What is told on the plan where the labels and chains of some slabs stand in details. */
  Facts without(Set<String> slabs) {
    return new Facts(
        layout,
        words,
        lettering,
        new Numbering(numbering.items().stream().filter(i -> !slabs.contains(i.slab())).toList()),
        runs,
        chains.stream().filter(c -> !slabs.contains(c.tape().slab())).toList(),
        ties,
        open,
        scales);
  }

  /** What is told of one slab alone; letters and numbers stay. */
  Facts only(String slab) {
    Slab one = plan().slab(slab).orElseThrow();
    Plan alone =
        plan()
            .withSlabs(List.of(one))
            .withFixed(plan().fixed().stream().filter(f -> f.slab().equals(slab)).toList())
            .withGiven(List.of());
    List<LetteredCorner> corners =
        lettering.corners().stream().filter(c -> isOn(one, c.at())).toList();
    return new Facts(
        Layouts.of(alone),
        words,
        new Lettering(
            corners,
            lettering.tapes().stream().filter(t -> t.slab().equals(slab)).toList(),
            lettering.within()),
        new Numbering(numbering.items().stream().filter(i -> i.slab().equals(slab)).toList()),
        runs,
        chains.stream().filter(c -> c.tape().slab().equals(slab)).toList(),
        ties,
        open,
        scales);
  }

  private static boolean isOn(Slab slab, Point p) {
    return slab.outline().ring().distance(p) < Sides.ON
        || slab.openings().stream().anyMatch(o -> o.outline().ring().distance(p) < Sides.ON);
  }

  Plan plan() {
    return layout.plan();
  }

  String print(double inches) {
    return words.print(Length.inches(inches));
  }

  /**
   * How deep to dig under the string, as what is printed of slab and base adds up: 4 in on 4 in are
   * 100 mm on 100 mm, and a crew that reads 205 mm beside them looks for a mistake.
   */
  String dig(Length thickness, Length base) {
    return words.print(
        Section.digBelowString(words.rounding().round(thickness), words.rounding().round(base)));
  }

  /** A length to 1/16 in or 1 mm: what a whole arc or a bend hangs on is told more finely. */
  String fine(double inches) {
    return LengthPrinter.print(Length.inches(inches), words.units().finest());
  }

  String say(String key, Object... arguments) {
    return words.say("sheet." + key, arguments);
  }

  /** What a box-out is round, in the crew's words. */
  String boxedOut(Item boxOut) {
    Map<FixedKind, Integer> counts = new TreeMap<>();
    plan()
        .boxedOut(boxOut.slab(), boxOut.boxOut().orElseThrow())
        .forEach(f -> counts.merge(f.kind(), 1, Integer::sum));
    String all = "";
    for (var of : counts.entrySet()) {
      String kind = say("fixed." + of.getKey().name());
      kind = of.getValue() > 1 ? say("fixed.several", String.valueOf(of.getValue()), kind) : kind;
      all = all.isEmpty() ? kind : say("fixed.and", all, kind);
    }
    return all;
  }

  /** Where a joint ends, in the crew's words. */
  String say(Whereabouts w) {
    return switch (w) {
      case Whereabouts.AtCorner c -> say("at.corner", c.corner().letter());
      case Whereabouts.OnTape t -> say("at.mark", print(t.along()), t.tape().name());
      case Whereabouts.AtBoxOut b -> say("at.boxOut", String.valueOf(b.number()));
      case Whereabouts.OnJoint j -> onJoint(j);
      case Whereabouts.Off o -> off(o);
    };
  }

  private String onJoint(Whereabouts.OnJoint j) {
    String number = String.valueOf(j.number());
    if (!isAtEnd(j)) {
      return say("at.joint", print(j.along()), number);
    }
    return say(j.along() < Sides.ON ? "at.joint.start" : "at.joint.end", number);
  }

  /** Whether a point of a joint is one of its ends. */
  boolean isAtEnd(Whereabouts.OnJoint j) {
    double length = Objects.requireNonNull(runs.get(j.number())).path().length();
    return j.along() < Sides.ON || length - j.along() < Sides.ON;
  }

  /** How such a point is found, said once where there is one; empty where there is none. */
  String square() {
    boolean joints =
        runs.values().stream()
            .anyMatch(
                r -> r.from() instanceof Whereabouts.Off || r.to() instanceof Whereabouts.Off);
    boolean corners =
        !ties.offsets().isEmpty() || plan().slabs().stream().anyMatch(s -> !s.openings().isEmpty());
    boolean boxOuts = numbering.items().stream().anyMatch(i -> i.boxOut().isPresent());
    return joints || corners || boxOuts ? say("at.square") : "";
  }

  /** A point told by going along a side and square off it. */
  String off(Whereabouts.Off o) {
    String key = o.left() >= 0 ? "at.left" : "at.right";
    return say(key, print(o.along()), o.tape().name(), print(Math.abs(o.left())));
  }
}
