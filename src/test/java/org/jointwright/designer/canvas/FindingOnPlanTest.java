package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jointwright.app.Answer;
import org.jointwright.app.Remedies;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Offer;
import org.jointwright.designer.state.Sight;
import org.jointwright.designer.state.Wish;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.fix.Fix;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What a finding speaks of, and what a fix would change, while the hand rests on it. */
class FindingOnPlanTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  /** A slab of 10 by 24 ft with one joint, so that its upper panel is too long. */
  private static Desk judged() {
    Joint joint =
        Joint.of(
            "J1",
            JointKind.CONTRACTION,
            org.jointwright.shape.Path.straight(new Point(0, 96), new Point(120, 96)),
            Purpose.SPACING);
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(120, 0), new Point(120, 288), new Point(0, 288)));
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(Slab.of("pad", outline).withLaid(List.of(joint), List.of())));
    Desk desk = Desk.opened(plan, Path.of("pad.jointwright.json")).fitted();
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.asItStands(plan);
    return desk.answered(new Laid(wish.generation(), plan, answer.layout(), answer.judgement()));
  }

  private static int tooLong(Desk desk) {
    List<String> rules =
        desk.laying().laid().orElseThrow().findings().stream().map(f -> f.rule()).toList();
    assertThat(rules).contains("M1");
    return rules.indexOf("M1") + 1;
  }

  private static Desk offered(Desk desk, int finding) {
    Laid laid = desk.laying().laid().orElseThrow();
    Remedies remedies = new Remedies(laid.asked(), laid.layout(), laid.judgement());
    List<Fix> fixes = remedies.of(laid.findings().get(finding - 1));
    assertThat(fixes).isNotEmpty();
    return desk.withSight(s -> s.goneTo(finding))
        .offered(new Offer(laid.generation(), finding, fixes));
  }

  private static Desk glancing(Desk desk, int finding, OptionalInt fix) {
    return desk.withSight(s -> s.glancingAt(Optional.of(new Sight.Glance(finding, fix))));
  }

  private static List<Mark.Line> dashed(Desk desk) {
    return LiveMarks.of(desk, held(desk), WORDS, new Vocabulary(WORDS)).stream()
        .filter(Mark.Line.class::isInstance)
        .map(Mark.Line.class::cast)
        .filter(l -> l.role() == Role.SELECTED && !l.dashes().isEmpty())
        .toList();
  }

  private static List<Mark.Words> names(Desk desk) {
    return Writing.of(Known.of(desk), desk, FlagMarks.of(desk), held(desk), WORDS)
        .panelNames(desk)
        .stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .toList();
  }

  @Test
  void aFixIsShownDashedWhileTheHandRestsOnItAndThePlanStaysAsItIs() {
    Desk desk = judged();
    int number = tooLong(desk);
    Desk offered = offered(desk, number);
    assertThat(dashed(offered)).as("gone to, but no fix looked at").isEmpty();
    Desk glancing = glancing(offered, number, OptionalInt.of(0));
    assertThat(glancing.plan()).isSameAs(desk.plan());
    Plan after =
        offered
            .laying()
            .offerFor(number)
            .orElseThrow()
            .fixes()
            .getFirst()
            .edit()
            .applyTo(desk.plan());
    Joint added = after.slabs().getFirst().joints().getLast();
    assertThat(dashed(glancing))
        .extracting(Mark.Line::path)
        .contains(desk.viewport().view().on(added.path()));
    assertThat(dashed(glancing(offered, number, OptionalInt.of(99)))).isEmpty();
  }

  @Test
  void aPanelIsNamedWhereItLiesWhileItsFindingIsGoneToOrPointedAt() {
    Desk desk = judged();
    int number = tooLong(desk);
    assertThat(names(desk)).noneMatch(n -> n.role() == Role.SELECTED);
    for (Desk at :
        List.of(
            desk.withSight(s -> s.goneTo(number)), glancing(desk, number, OptionalInt.empty()))) {
      Mark.Words name = names(at).getFirst();
      assertThat(names(at)).hasSize(1);
      assertThat(name.role()).isEqualTo(Role.SELECTED);
      assertThat(name.text()).matches("P\\d+");
      Point on = at.viewport().view().back(name.at());
      assertThat(on.y()).as("in the upper panel").isBetween(96.0, 288.0);
      assertThat(on.x()).isBetween(0.0, 120.0);
    }
  }

  /** The list speaks of it: whoever reads there finds it on the plan before clicking anything. */
  @Test
  void aPanelThatMustBeMendedIsNamedWithoutAskingWhereThereIsRoom() {
    Desk desk = judged();
    Mark.Words name = names(desk).getFirst();
    assertThat(names(desk)).hasSize(1);
    Point on = desk.viewport().view().back(name.at());
    assertThat(on.y()).as("in the upper panel").isBetween(96.0, 288.0);
    Box box = new Box(name.at().x() - 8, name.at().y() - 12, name.at().x() + 8, name.at().y());
    assertThat(FlagMarks.of(desk).marks(new Places()))
        .flatExtracting(Mark.Group::marks)
        .filteredOn(Mark.Line.class::isInstance)
        .extracting(m -> ((Mark.Line) m).path().edges().getFirst().box())
        .noneMatch(b -> b.meets(box));
    Desk far = desk.withSight(s -> s.with(s.viewport().zoomed(new Point(372, 380), 0.1), false));
    assertThat(names(far)).as("no room for it").isEmpty();
  }

  @Test
  void theNameOfAPanelStandsOnNoNumberAndNoFlag() {
    Desk desk = judged();
    Desk at = desk.withSight(s -> s.goneTo(tooLong(desk)));
    Point name = names(at).getFirst().at();
    Box box = new Box(name.x() - 16, name.y() - 14, name.x() + 16, name.y() + 4);
    assertThat(FlagMarks.of(at).cloths()).noneMatch(b -> b.meets(box));
  }

  private static List<Mark> held(Desk desk) {
    return HoldMarks.of(desk, Known.of(desk), FlagMarks.of(desk), WORDS);
  }
}
