package org.jointwright.reason.words;

import java.util.Locale;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.reason.Origin;
import org.jointwright.text.Words;

/** Says what a joint takes its place from, each in one sentence. */
record OriginWords(Words words, LineNames lines) {
  /** A bend that shows on the plan, degrees. */
  private static final double BENT = 0.5;

  String say(Origin origin) {
    return switch (origin) {
      case Origin.InsideCorner o ->
          corner("reason.insideCorner", "reason.someInsideCorner", o.letter());
      case Origin.BoxOutCorner o -> words.say("reason.boxOutCorner", lines.object(o.fixed()));
      case Origin.BoxOutSide o -> words.say("reason.boxOutSide", lines.object(o.fixed()));
      case Origin.EndOfArc o -> corner("reason.endOfArc", "reason.someEndOfArc", o.letter());
      case Origin.OutsideCorner o ->
          corner("reason.outsideCorner", "reason.someOutsideCorner", o.letter());
      case Origin.FeatureEnd o ->
          words.say("reason.feature." + o.kind().name().toLowerCase(Locale.ROOT), lines.of(o.of()));
      case Origin.GivenJointEnd o -> words.say("reason.given");
      case Origin.NeighbourJoint o ->
          words.say("reason.neighbour", lines.joints().of(o.slab(), o.joint()), o.slab());
      case Origin.GoesOn o ->
          o.bend() < BENT
              ? words.say("reason.goesOn", joint(o.joint()))
              : words.say("reason.goesOnBent", joint(o.joint()), o.bend());
      case Origin.EndsOn o -> words.say("reason.endsOn", joint(o.joint()));
      case Origin.WholeMark o ->
          words.say("reason.wholeMark", Length.inches(o.inches()), o.corner(), o.tape());
      case Origin.Radial o -> words.say("reason.radial", lines.of(o.of()));
      case Origin.Concentric o -> words.say("reason.concentric", lines.of(o.of()));
      case Origin.Even o -> even(o);
      case Origin.EvenRound o -> words.say("reason.evenRound", o.of());
      case Origin.Between o -> between(o);
      case Origin.Parts o -> words.say("reason.parts");
      case Origin.Locked o -> words.say("reason.locked");
      case Origin.AlongEdge o ->
          words.say(
              "reason.along." + o.against().name().toLowerCase(Locale.ROOT), lines.of(o.of()));
      case Origin.RoundObject o -> words.say("reason.round", lines.object(o.fixed()));
      case Origin.SlabsMeet o -> words.say("reason.slabsMeet", o.other());
      case Origin.PourEnds o -> pourEnds(o);
      case Origin.CornerTip o -> words.say("reason.cornerTip", o.letter().orElse(""), o.degrees());
    };
  }

  private String pourEnds(Origin.PourEnds o) {
    if (o.volume().isPresent() && o.width().isPresent()) {
      return words.say(
          "reason.pourEnds.both",
          o.volume().get(),
          o.limits().most().orElseThrow(),
          o.width().get(),
          o.limits().strip().orElseThrow());
    }
    if (o.volume().isPresent()) {
      return words.say("reason.pourEnds.volume", o.volume().get(), o.limits().most().orElseThrow());
    }
    if (o.width().isPresent()) {
      return words.say("reason.pourEnds.strip", o.width().get(), o.limits().strip().orElseThrow());
    }
    return words.say("reason.pourEnds");
  }

  private String corner(String lettered, String bare, Optional<String> letter) {
    return letter.map(l -> words.say(lettered, l)).orElseGet(() -> words.say(bare));
  }

  private String joint(String id) {
    return lines.of(new org.jointwright.joint.Source.OnJoint(id));
  }

  private String even(Origin.Even o) {
    String from = lines.of(o.from());
    String to = lines.of(o.to());
    if (from.equals(to)) {
      // The way bends round and both its ends lie on one side, as at a half round with one
      // straight.
      return o.of() == 2
          ? words.say("reason.halfWayRound", from, Length.inches(o.whole() / 2))
          : words.say(
              "reason.evenOfOne", o.of(), from, o.part(), Length.inches(o.whole() / o.of()));
    }
    Length part = Length.inches(o.whole() / o.of());
    Length before = Length.inches(o.share() * o.whole());
    Length exact = Length.inches(part.inches() * o.part());
    boolean isExact = words.print(before).equals(words.print(exact));
    if (o.of() == 2 && !isExact) {
      Length after = Length.inches(o.whole() - before.inches());
      return words.say("reason.nearHalfWay", from, to, before, after);
    }
    return o.of() == 2
        ? words.say("reason.halfWay", from, to, part)
        : words.say(isExact ? "reason.even" : "reason.nearEven", o.of(), from, to, o.part(), part);
  }

  private String between(Origin.Between o) {
    return words.say(
        "reason.between",
        Length.inches(o.before()),
        lines.of(o.from()),
        Length.inches(o.after()),
        lines.of(o.to()));
  }
}
