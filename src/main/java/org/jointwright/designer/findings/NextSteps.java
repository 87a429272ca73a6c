package org.jointwright.designer.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.fix.name.Called;
import org.jointwright.fix.name.JointName;
import org.jointwright.fix.name.ObjectsAt;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.text.Words;

/**
 * What a person can go on with at a finding that no fix clears: nothing here is known to help, but
 * each is where a finisher would look next.
 */
record NextSteps(Desk desk, Laid laid, Finding finding, Words words) {
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
              ObjectsAt.of(s, finding).stream()
                  .limit(MOST_OBJECTS)
                  .map(this::moving)
                  .forEach(steps::add);
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
