package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jointwright.check.Finding;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.joint.Source;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.reason.Origin;
import org.jointwright.reason.Reason;
import org.jointwright.reason.Without;
import org.jointwright.reason.words.ReasonWords;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * The reasons of a joint as members of the layout output.
 *
 * @param words what the rules and sources are said in
 * @param sentences what the reasons are said in
 * @param length writes inches in the plan's unit
 * @param point writes a place in the plan's unit
 */
record ReasonMembers(
    Words words, ReasonWords sentences, DoubleFunction<Json> length, Function<Point, Json> point) {
  Json of(Reason reason) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("origins", Json.of(reason.origins().stream().map(o -> origin(reason, o)).toList()));
    members.put("without", without(reason, reason.without()));
    reason.withoutLine().ifPresent(w -> members.put("withoutLine", without(reason, w)));
    members.put("cracks", Json.of(reason.cracks().stream().map(this::crack).toList()));
    return Json.of(members);
  }

  private Json origin(Reason reason, Origin origin) {
    Map<String, Json> m = new LinkedHashMap<>();
    m.put("from", Json.of(name(origin)));
    m.put("where", Json.of(origin.where().name().toLowerCase(Locale.ROOT)));
    switch (origin) {
      case Origin.InsideCorner o -> corner(m, o.of(), o.at(), o.letter(), o.degrees());
      case Origin.OutsideCorner o -> corner(m, o.of(), o.at(), o.letter(), o.degrees());
      case Origin.CornerTip o -> {
        m.put("at", point.apply(o.at()));
        o.letter().ifPresent(l -> m.put("letter", Json.of(l)));
        m.put("degrees", figure(o.degrees()));
      }
      case Origin.EndOfArc o -> {
        m.put("of", line(o.of()));
        m.put("at", point.apply(o.at()));
        o.letter().ifPresent(l -> m.put("letter", Json.of(l)));
      }
      case Origin.BoxOutCorner o -> {
        m.put("fixed", Json.of(o.fixed()));
        m.put("at", point.apply(o.at()));
      }
      case Origin.BoxOutSide o -> m.put("fixed", Json.of(o.fixed()));
      case Origin.RoundObject o -> m.put("fixed", Json.of(o.fixed()));
      case Origin.FeatureEnd o -> {
        m.put("of", line(o.of()));
        m.put("feature", figure(o.number()));
        m.put("end", Json.of(o.first() ? "from" : "to"));
      }
      case Origin.GivenJointEnd o -> m.put("given", figure(o.number()));
      case Origin.NeighbourJoint o -> {
        m.put("slab", Json.of(o.slab()));
        m.put("joint", Json.of(o.joint()));
      }
      case Origin.GoesOn o -> m.put("joint", Json.of(o.joint()));
      case Origin.EndsOn o -> m.put("joint", Json.of(o.joint()));
      case Origin.WholeMark o -> {
        m.put("corner", Json.of(o.corner()));
        m.put("side", Json.of(o.tape()));
        m.put("mark", length.apply(o.inches()));
      }
      case Origin.Radial o -> round(m, o.of(), o.centre());
      case Origin.Concentric o -> round(m, o.of(), o.centre());
      case Origin.Even o -> {
        m.put("between", Json.of(List.of(line(o.from()), line(o.to()))));
        m.put("part", figure(o.part()));
        m.put("parts", figure(o.of()));
        m.put("share", figure(o.share()));
        m.put("whole", length.apply(o.whole()));
      }
      case Origin.EvenRound o -> {
        m.put("of", line(o.rim()));
        m.put("parts", figure(o.of()));
      }
      case Origin.Between o -> {
        m.put("between", Json.of(List.of(line(o.from()), line(o.to()))));
        m.put("away", Json.of(List.of(length.apply(o.before()), length.apply(o.after()))));
      }
      case Origin.AlongEdge o -> {
        m.put("of", line(o.of()));
        m.put("against", Json.of(o.against().name().toLowerCase(Locale.ROOT)));
      }
      case Origin.SlabsMeet o -> m.put("slab", Json.of(o.other()));
      case Origin.Parts o -> {}
      case Origin.Locked o -> {}
      case Origin.PourEnds o -> {
        List<String> limits = new ArrayList<>();
        o.volume().ifPresent(v -> limits.add("most"));
        o.width().ifPresent(w -> limits.add("strip"));
        m.put("limits", Json.of(limits.stream().map(Json::of).toList()));
      }
    }
    m.put("message", Json.of(sentences.origin(reason, origin)));
    return Json.of(m);
  }

  private static String name(Origin origin) {
    return switch (origin) {
      case Origin.InsideCorner o -> "inside-corner";
      case Origin.BoxOutCorner o -> "box-out-corner";
      case Origin.BoxOutSide o -> "box-out-side";
      case Origin.EndOfArc o -> "end-of-arc";
      case Origin.OutsideCorner o -> "outside-corner";
      case Origin.FeatureEnd o -> "feature";
      case Origin.GivenJointEnd o -> "given-joint";
      case Origin.NeighbourJoint o -> "neighbour-joint";
      case Origin.GoesOn o -> "goes-on";
      case Origin.EndsOn o -> "ends-on";
      case Origin.WholeMark o -> "whole-mark";
      case Origin.Radial o -> "radial";
      case Origin.Concentric o -> "concentric";
      case Origin.Even o -> "even";
      case Origin.EvenRound o -> "even-round";
      case Origin.Between o -> "between";
      case Origin.Parts o -> "parts";
      case Origin.Locked o -> "locked";
      case Origin.AlongEdge o -> "along-edge";
      case Origin.RoundObject o -> "round-object";
      case Origin.SlabsMeet o -> "slabs-meet";
      case Origin.PourEnds o -> "pour-ends";
      case Origin.CornerTip o -> "corner-tip";
    };
  }

  private void corner(
      Map<String, Json> m, Source of, Point at, Optional<String> letter, double degrees) {
    m.put("of", line(of));
    m.put("at", point.apply(at));
    letter.ifPresent(l -> m.put("letter", Json.of(l)));
    m.put("degrees", figure(degrees));
  }

  private void round(Map<String, Json> m, Source of, Point centre) {
    m.put("of", line(of));
    m.put("centre", point.apply(centre));
  }

  private static Json line(Source source) {
    Map<String, Json> m = new LinkedHashMap<>();
    switch (source) {
      case Source.OnOutline e -> m.put("edge", figure(e.edge()));
      case Source.OnOpening e -> {
        m.put("opening", figure(e.opening()));
        m.put("edge", figure(e.edge()));
      }
      case Source.OnBoxOut e -> {
        m.put("boxout", Json.of(e.fixed()));
        m.put("edge", figure(e.edge()));
      }
      case Source.OnJoint j -> m.put("joint", Json.of(j.joint()));
    }
    return Json.of(m);
  }

  private Json without(Reason reason, Without without) {
    Map<String, Json> m = new LinkedHashMap<>();
    m.put("joints", Json.of(without.joints().stream().map(Json::of).toList()));
    m.put("breaks", Json.of(without.breaks().stream().map(f -> finding(reason, f)).toList()));
    m.put("worse", Json.of(without.worse().stream().map(f -> finding(reason, f)).toList()));
    m.put(
        "longest",
        Json.of(
            List.of(
                length.apply(without.before().longest()),
                length.apply(without.after().longest()))));
    m.put(
        "cv",
        Json.of(
            List.of(
                figure(without.before().figures().cv()), figure(without.after().figures().cv()))));
    return Json.of(m);
  }

  private Json finding(Reason reason, Finding f) {
    Map<String, Json> m = new LinkedHashMap<>();
    m.put("rule", Json.of(f.rule()));
    m.put("at", point.apply(f.at()));
    m.put("measured", measure(f, f.measured()));
    m.put("limit", measure(f, f.limit()));
    m.put("message", Json.of(sentences.broken(reason, f)));
    m.put("source", Json.of(f.sourcesSaid(words::say)));
    return Json.of(m);
  }

  /** Rules that measure lengths are written in the plan's unit, degrees and shares as they are. */
  private Json measure(Finding f, double value) {
    return switch (f.rule()) {
      case "M1", "M5", "M6", "M7", "M9", "S7", "S9" -> length.apply(value);
      default -> figure(value);
    };
  }

  private Json crack(LikelyCrack crack) {
    Map<String, Json> m = new LinkedHashMap<>();
    m.put("path", Json.of(List.of(point.apply(crack.from()), point.apply(crack.to()))));
    m.put("meets", line(crack.meets()));
    m.put("degrees", figure(crack.degrees()));
    m.put("computed", Json.of(false));
    m.put("source", Json.of(words.say("check.source.read", crack.source().reference())));
    return Json.of(m);
  }

  private static Json figure(double value) {
    return new Json.Figure(Decimals.rounded(value, 4), 0);
  }
}
