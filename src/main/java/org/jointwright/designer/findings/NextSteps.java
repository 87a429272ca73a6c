package org.jointwright.designer.findings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.fix.name.Called;
import org.jointwright.fix.name.JointName;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * What a person can go on with at a finding that no fix clears: nothing here is known to help, but
 * each is where a finisher would look next.
 */
record NextSteps(Desk desk, Laid laid, Finding finding, Words words) {
  /** A box-out this near to a finding has its part in it, inches. */
  private static final double BESIDE = 1;

  /** So many objects are named at most: more would be a list to read, not a step to take. */
  private static final int MOST_OBJECTS = 2;

  /**
   * One of them.
   *
   * @param text an order, in words
   * @param taken the desk with it done
   */
  record NextStep(String text, UnaryOperator<Desk> taken) {}

  /** The steps, the likeliest to help first. */
  List<NextStep> all() {
    List<NextStep> steps = new ArrayList<>();
    unlocking().ifPresent(steps::add);
    laid.layout()
        .slab(finding.slab())
        .ifPresent(
            s -> {
              layingAnew(s.slab()).ifPresent(steps::add);
              objects(s).stream().limit(MOST_OBJECTS).map(this::moving).forEach(steps::add);
              if (finding.rule().equals("M1")) {
                steps.add(thicker());
              }
              if (s.slab().joints().stream().anyMatch(LayAnew::isCut)) {
                steps.add(others());
              }
            });
    return steps;
  }

  /** A joint that is locked stands there because somebody wanted it so. */
  private Optional<NextStep> unlocking() {
    String slab = finding.slab();
    return finding
        .joint()
        .filter(
            id ->
                desk.plan().slab(slab).stream()
                    .flatMap(s -> s.lockedJoints().stream())
                    .anyMatch(j -> j.id().equals(id)))
        .map(
            id ->
                new NextStep(
                    words.say(
                        "window.fix.unlock", Called.in(desk.plan()).joint(new JointName(slab, id))),
                    d -> d.editedOnly(new JointEdit.Lock(slab, id, false))));
  }

  /** Joints that a hand has changed, or that came in a file, may be laid otherwise. */
  private Optional<NextStep> layingAnew(Slab slab) {
    return LayAnew.of(desk, slab, words).map(a -> new NextStep(a.text(), a::done));
  }

  /** The fixed objects whose box-outs the finding is at, or the panel that it is of. */
  private Set<String> objects(SlabLayout slab) {
    Set<String> objects = new LinkedHashSet<>();
    Optional<Panel> panel =
        finding
            .panel()
            .flatMap(id -> slab.panels().stream().filter(p -> p.id().equals(id)).findFirst());
    Optional<Joint> joint =
        finding
            .joint()
            .flatMap(id -> slab.joints().stream().filter(j -> j.id().equals(id)).findFirst());
    for (BoxOut box : slab.slab().boxOuts()) {
      boolean isAt = box.outline().ring().distance(finding.at()) <= BESIDE;
      boolean isOfPanel =
          panel.filter(p -> touches(box, p.region().outer().vertices())).isPresent();
      boolean isOfJoint =
          joint.filter(j -> touches(box, List.of(j.path().start(), j.path().end()))).isPresent();
      if (isAt || isOfPanel || isOfJoint) {
        objects.add(box.fixed());
      }
    }
    return objects;
  }

  private static boolean touches(BoxOut box, List<Point> points) {
    return points.stream().anyMatch(p -> box.outline().ring().distance(p) <= BESIDE);
  }

  private NextStep moving(String object) {
    return new NextStep(
        words.say("window.fix.moveObject", object),
        d -> d.withStep(Step.OUTLINE).picking(new Pick.AtFixed(object)));
  }

  private NextStep thicker() {
    String slab = finding.slab();
    return new NextStep(
        words.say("window.fix.thicker", slab), d -> d.picking(new Pick.WholeSlab(slab)));
  }

  private NextStep others() {
    String slab = finding.slab();
    return new NextStep(
        words.say("window.fix.others", slab),
        d -> d.picking(new Pick.WholeSlab(slab)).choosing(slab));
  }
}
