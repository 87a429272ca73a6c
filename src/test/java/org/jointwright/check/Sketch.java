package org.jointwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Against;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.SpacingRule;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** A slab put together for a test, in inches; judged, every finding must have its words. */
public final class Sketch {
  private final List<Joint> joints = new ArrayList<>();
  private final List<BoxOut> boxOuts = new ArrayList<>();
  private final List<FixedObject> fixed = new ArrayList<>();
  private final Map<Integer, EdgeSetting> edges = new TreeMap<>();
  private final List<Opening> openings = new ArrayList<>();
  private final Outline outline;
  private Jointing jointing = Jointing.DEFAULT;
  private final List<Slab> beside = new ArrayList<>();
  private final List<KeepClear> zones = new ArrayList<>();
  private final List<GivenJoint> given = new ArrayList<>();
  private Pour pour = Pour.UNLIMITED;
  private LengthUnit unit = LengthUnit.FOOT;
  private double thickness = 4;

  private Sketch(Outline outline) {
    this.outline = outline;
  }

  public static Sketch rectangle(double width, double height) {
    return polygon(0, 0, width, 0, width, height, 0, height);
  }

  public static Sketch polygon(double... xy) {
    return of(points(xy).stream().map(Vertex::at).toArray(Vertex[]::new));
  }

  public static Sketch of(Vertex... vertices) {
    return new Sketch(new Outline(List.of(vertices)));
  }

  private static List<Point> points(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }

  public Sketch thick(double inches) {
    thickness = inches;
    return this;
  }

  public Sketch rule(SpacingRule rule) {
    jointing = jointing.withRule(rule);
    return this;
  }

  public Sketch spacing(double inches) {
    jointing = jointing.withMaxSpacing(Length.inches(inches));
    return this;
  }

  public Sketch aspect(double value) {
    jointing = jointing.withAspect(value);
    return this;
  }

  public Sketch joint(double... xy) {
    return joint(JointKind.CONTRACTION, xy);
  }

  public Sketch joint(JointKind kind, double... xy) {
    return add(
        Joint.of("J" + (joints.size() + 1), kind, Path.through(points(xy)), Purpose.SPACING));
  }

  public Sketch filler(double... xy) {
    return joint(JointKind.ISOLATION, xy);
  }

  public Sketch cornerJoint(double... xy) {
    return add(
        Joint.of(
            "J" + (joints.size() + 1),
            JointKind.CONTRACTION,
            Path.through(points(xy)),
            Purpose.CORNER));
  }

  public Sketch add(Joint joint) {
    joints.add(joint);
    return this;
  }

  public Sketch made(How how, double depth) {
    Joint j = joints.removeLast();
    joints.add(
        new Joint(
            j.id(),
            j.kind(),
            j.path(),
            j.locked(),
            j.purpose(),
            Optional.of(how),
            Optional.of(Length.inches(depth)),
            Optional.empty(),
            Kept.NOTHING));
    return this;
  }

  public Sketch edge(int edge, Against against) {
    edges.put(edge, EdgeSetting.against(against));
    return this;
  }

  public Sketch thickened(int edge, Thickened thickened) {
    edges.put(edge, EdgeSetting.OPEN.withThickened(Optional.of(thickened)));
    return this;
  }

  public Sketch floats(int edge, Against against) {
    edges.put(edge, EdgeSetting.against(against).withFloats(true));
    return this;
  }

  public Sketch opening(double... xy) {
    openings.add(new Opening(Outline.of(points(xy)), Map.of(), Kept.NOTHING));
    return this;
  }

  public Sketch opening(Vertex... vertices) {
    openings.add(new Opening(new Outline(Arrays.asList(vertices)), Map.of(), Kept.NOTHING));
    return this;
  }

  public Sketch post(double x, double y, double diameter) {
    return post("post", x, y, diameter);
  }

  public Sketch post(String id, double x, double y, double diameter) {
    FixedShape shape = new FixedShape.Round(new Point(x, y), Length.inches(diameter), Kept.NOTHING);
    fixed.add(new FixedObject(id, "slab", FixedKind.POST, shape, Kept.NOTHING));
    return this;
  }

  /** Locks the joint that was added last. */
  public Sketch locked() {
    joints.add(joints.removeLast().withLocked(true));
    return this;
  }

  public Sketch metric() {
    unit = LengthUnit.METRE;
    return this;
  }

  public Sketch minPanel(double inches) {
    jointing =
        new Jointing(
            jointing.rule(),
            jointing.maxSpacing(),
            jointing.aspect(),
            Optional.of(Length.inches(inches)),
            jointing.preference(),
            Kept.NOTHING);
    return this;
  }

  public Sketch keepClear(String name, double... xy) {
    zones.add(KeepClear.of(name, Outline.of(points(xy))));
    return this;
  }

  public Sketch given(double... xy) {
    given.add(GivenJoint.of(Path.through(points(xy))));
    return this;
  }

  public Sketch feature(int edge, double from, double to) {
    Feature door = Feature.of(FeatureKind.GARAGE_DOOR, from, to);
    edges.put(edge, EdgeSetting.OPEN.withFeatures(List.of(door)));
    return this;
  }

  public Sketch pour(Optional<Volume> most, Optional<Length> strip) {
    pour = new Pour(most, strip, Kept.NOTHING);
    return this;
  }

  /** Another sketch's slab beside this one, under that name. */
  public Sketch beside(String id, Sketch other) {
    beside.add(other.plan().slabs().getFirst().withId(id));
    return this;
  }

  /** A box-out round the post with filler all round it. */
  public Sketch boxOut(double... xy) {
    List<Point> round = points(xy);
    round.add(round.getFirst());
    bareBoxOut(xy);
    return add(
        Joint.of(
            "J" + (joints.size() + 1),
            JointKind.ISOLATION,
            Path.through(round),
            Purpose.ISOLATION));
  }

  public Sketch bareBoxOut(double... xy) {
    boxOuts.add(new BoxOut("post", Outline.of(points(xy)), Kept.NOTHING));
    return this;
  }

  public Plan plan() {
    Slab slab =
        Slab.of("slab", outline)
            .withThickness(Length.inches(thickness))
            .withEdges(edges)
            .withOpenings(openings)
            .withJointing(jointing)
            .withKeepClear(zones)
            .withLaid(joints, boxOuts);
    List<Slab> slabs = new ArrayList<>(List.of(slab));
    slabs.addAll(beside);
    Plan none = Plan.EMPTY;
    return new Plan(unit, none.north(), none.job(), slabs, fixed, given, pour, none.kept());
  }

  /** What a rule finds, by all weights. */
  public List<Finding> findings(String rule) {
    return findings(rule, plan());
  }

  /** What a rule finds when this was laid for another plan. */
  public List<Finding> findings(String rule, Plan asked) {
    Judgement judgement = Checks.judge(asked, Layouts.of(plan()));
    assertThat(judgement.crashed()).isEmpty();
    judgement.findings().forEach(Sketch::hasWords);
    return judgement.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** The keys of what a rule finds broken. */
  public List<String> broken(String rule) {
    return findings(rule).stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .map(Finding::key)
        .toList();
  }

  private static void hasWords(Finding f) {
    for (UnitSystem units : UnitSystem.values()) {
      Words words = Words.english(units);
      assertThat(words.say(f.key(), f.arguments().toArray())).isNotBlank().doesNotContain("{");
      assertThat(f.sourcesSaid(words::say)).isNotBlank();
    }
  }
}
