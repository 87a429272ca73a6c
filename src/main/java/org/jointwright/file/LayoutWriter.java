package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jointwright.check.Finding;
import org.jointwright.check.evidence.Judged;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonPrinter;
import org.jointwright.fix.Fix;
import org.jointwright.fix.name.Called;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.reason.Reason;
import org.jointwright.reason.words.ReasonWords;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * Writes the layout output: every panel whole, arcs as chords, everything in the plan's unit. The
 * chords of an arc are the same in each panel beside it and in the joint along it.
 */
public final class LayoutWriter {
  private final LengthUnit unit;
  private final int decimals;
  private final List<Reason> reasons;
  private final Called called;

  private LayoutWriter(Plan plan, List<Reason> reasons) {
    this.unit = plan.unit();
    this.called = Called.in(plan);
    this.reasons = reasons;
    // At least four, and in every unit some thousandths of an inch or finer.
    this.decimals =
        switch (unit) {
          case FOOT, INCH, CENTIMETRE -> 6;
          case METRE -> 7;
          case MILLIMETRE -> 4;
        };
  }

  /**
   * The layout as the text of a file.
   *
   * @param findings what the rules say of it
   * @param reasons why its joints are where they are; a joint that has none here is written without
   * @param words what the findings, the reasons and the fixes are said in
   * @param fixes what can be done about a finding; the joints that would come of it are written
   */
  public static String write(
      Layout layout,
      List<Finding> findings,
      List<Reason> reasons,
      Words words,
      Function<Finding, List<Fix>> fixes) {
    LayoutWriter writer = new LayoutWriter(layout.plan(), reasons);
    ReasonMembers why =
        new ReasonMembers(
            words, ReasonWords.byNumber(layout.plan(), words), writer::length, writer::point);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("unit", Json.of(layout.plan().unit().symbol()));
    members.put(
        "slabs", Json.of(layout.slabs().stream().map(s -> writer.slab(layout, s, why)).toList()));
    List<Json> found =
        findings.stream().map(f -> writer.finding(layout, f, words, fixes.apply(f))).toList();
    members.put("findings", Json.of(found));
    return JsonPrinter.pretty(Json.of(members));
  }

  private Json finding(Layout layout, Finding finding, Words words, List<Fix> fixes) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("rule", Json.of(finding.rule()));
    members.put("severity", Json.of(finding.severity().name().toLowerCase(Locale.ROOT)));
    members.put("slab", Json.of(finding.slab()));
    finding.panel().ifPresent(p -> members.put("panel", Json.of(p)));
    finding.joint().ifPresent(j -> members.put("joint", Json.of(j)));
    members.put("at", point(finding.at()));
    String message = words.say(finding.key(), called.in(finding));
    members.put("message", Json.of(message));
    members.put("source", Json.of(finding.sourcesSaid(words::say)));
    if (!fixes.isEmpty()) {
      members.put("fixes", Json.of(fixes.stream().map(f -> fix(layout, f, words)).toList()));
    }
    return Json.of(members);
  }

  /** What a fix says, and the joints and box-outs of the slabs that it changes. */
  private Json fix(Layout before, Fix fix, Words words) {
    Layout after = Layouts.of(fix.edit().applyTo(before.plan()));
    List<Json> changed = new ArrayList<>();
    for (SlabLayout slab : after.slabs()) {
      Optional<SlabLayout> was = before.slab(slab.slab().id());
      if (was.isEmpty()
          || !was.get().joints().equals(slab.joints())
          || !was.get().boxOuts().equals(slab.boxOuts())) {
        changed.add(laidOf(slab));
      }
    }
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("message", Json.of(words.say(fix.key(), called.in(fix.arguments()))));
    members.put("slabs", Json.of(changed));
    return Json.of(members);
  }

  private Json laidOf(SlabLayout layout) {
    ChordLines lines = new ChordLines(layout);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(layout.slab().id()));
    members.put("boxouts", Json.of(layout.boxOuts().stream().map(b -> boxOut(b, lines)).toList()));
    members.put(
        "joints", Json.of(layout.joints().stream().map(j -> Json.of(joint(j, lines))).toList()));
    return Json.of(members);
  }

  private Json slab(Layout whole, SlabLayout layout, ReasonMembers why) {
    Slab slab = layout.slab();
    Length longest = new Judged(whole.plan(), whole, layout).spacing();
    ChordLines lines = new ChordLines(layout);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(slab.id()));
    members.put("maxSpacing", length(longest.inches()));
    members.put("boxouts", Json.of(layout.boxOuts().stream().map(b -> boxOut(b, lines)).toList()));
    members.put("panels", Json.of(layout.panels().stream().map(p -> panel(p, lines)).toList()));
    members.put(
        "joints", Json.of(layout.joints().stream().map(j -> joint(slab, j, lines, why)).toList()));
    return Json.of(members);
  }

  private Json boxOut(BoxOut boxOut, ChordLines lines) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("fixed", Json.of(boxOut.fixed()));
    members.put("ring", ring(boxOut.outline().ring().edges(), lines));
    return Json.of(members);
  }

  private Json panel(Panel panel, ChordLines lines) {
    PanelMeasures measures = PanelMeasures.of(panel);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(panel.id()));
    members.put("ring", ring(edges(panel.outer()), lines));
    members.put("holes", Json.of(panel.holes().stream().map(h -> ring(edges(h), lines)).toList()));
    members.put("area", number(measures.area() / unit.inches() / unit.inches()));
    members.put("long", length(measures.longSide()));
    members.put("short", length(measures.shortSide()));
    members.put("aspect", number(measures.aspect()));
    return Json.of(members);
  }

  private static List<Edge> edges(List<Side> sides) {
    return sides.stream().map(Side::edge).toList();
  }

  private Json joint(Slab slab, Joint joint, ChordLines lines, ReasonMembers why) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(joint.id()));
    called
        .numbering()
        .of(slab.id(), joint)
        .ifPresent(i -> members.put("number", new Json.Figure(Integer.toString(i.number()), 0)));
    joint(joint, lines).forEach(members::putIfAbsent);
    reasons.stream()
        .filter(r -> r.slab().equals(slab.id()) && r.joint().equals(joint.id()))
        .findFirst()
        .ifPresent(r -> members.put("reasons", why.of(r)));
    return Json.of(members);
  }

  private Map<String, Json> joint(Joint joint, ChordLines lines) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(joint.id()));
    members.put("kind", Json.of(FileWords.JOINT_KIND.apply(joint.kind())));
    List<Point> points = new ArrayList<>(lines.along(joint.path().edges()));
    points.add(joint.path().end());
    members.put("path", points(points));
    members.put("length", length(joint.path().length()));
    members.put("purpose", Json.of(FileWords.PURPOSE.apply(joint.purpose())));
    joint.how().ifPresent(h -> members.put("how", Json.of(h.word())));
    joint
        .depth()
        .ifPresent(
            d -> members.put("depth", Lengths.size(joint.kept(), "depth", d.inches(), unit)));
    joint
        .width()
        .ifPresent(
            w -> members.put("width", Lengths.size(joint.kept(), "width", w.inches(), unit)));
    members.put("locked", Json.of(joint.locked()));
    return members;
  }

  private Json ring(List<Edge> edges, ChordLines lines) {
    return points(lines.along(edges));
  }

  private Json points(List<Point> points) {
    return Json.of(points.stream().map(this::point).toList());
  }

  private Json point(Point p) {
    return Json.of(List.of(length(p.x()), length(p.y())));
  }

  private Json length(double inches) {
    return number(inches / unit.inches());
  }

  private Json number(double value) {
    return new Json.Figure(Decimals.rounded(value, decimals), 0);
  }
}
