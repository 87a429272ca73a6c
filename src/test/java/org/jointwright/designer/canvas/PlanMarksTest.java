package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jointwright.app.Answer;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Wish;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanMarksTest {
  /** What is written, from below upwards. */
  private static final List<String> KINDS = List.of("stake-", "number-", "cloth-");

  /**
   * A flag's stake may cross a joint's number, and the way to a number a flag: the figure must lie
   * over it.
   */
  @Test
  void numbersLieOverStakesAndUnderFlags() {
    List<String> names =
        Writing.of(
                Known.of(judged()),
                judged(),
                FlagMarks.of(judged()),
                List.of(),
                Words.english(UnitSystem.FEET_INCHES))
            .marks()
            .stream()
            .filter(Mark.Group.class::isInstance)
            .map(m -> ((Mark.Group) m).name())
            .filter(n -> KINDS.stream().anyMatch(n::startsWith))
            .toList();
    assertThat(names).contains("stake-finding-1,2", "number-1", "cloth-finding-1,2");
    List<String> inOrder =
        KINDS.stream().flatMap(k -> names.stream().filter(n -> n.startsWith(k))).toList();
    assertThat(names).isEqualTo(inOrder);
  }

  /** A house above a slab and a street below it stand clear of what the window writes there. */
  @ParameterizedTest
  @ValueSource(doubles = {440, 493, 600, 720, 1040})
  void whatStandsBesideKeepsClearOfWhatIsWritten(double height) {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(600, 0), new Point(600, 900), new Point(0, 900)));
    Slab slab =
        Slab.of("drive", outline)
            .withEdges(
                Map.of(
                    0,
                    EdgeSetting.against(Against.STREET),
                    2,
                    EdgeSetting.against(Against.BUILDING)));
    Desk desk =
        Desk.opened(Plan.EMPTY.withSlabs(List.of(slab)), Path.of("drive.jointwright.json"))
            .resized(700, height)
            .fitted();
    List<Box> bands =
        PlanMarks.plan(Known.of(desk), desk).stream()
            .flatMap(m -> bands(m).stream())
            .map(a -> a.rings().getFirst().box())
            .toList();
    Box clear = desk.viewport().written();
    assertThat(bands).hasSize(2);
    assertThat(bands)
        .allSatisfy(b -> assertThat(b.minY()).isGreaterThanOrEqualTo(clear.minY() - 1e-9))
        .allSatisfy(b -> assertThat(b.maxY()).isLessThanOrEqualTo(clear.maxY() + 1e-9))
        .allSatisfy(b -> assertThat(b.height()).isGreaterThan(18));
  }

  private static List<Mark.Area> bands(Mark mark) {
    return switch (mark) {
      case Mark.Group g -> g.marks().stream().flatMap(m -> bands(m).stream()).toList();
      case Mark.Area a when a.role() == Role.BUILDING || a.role() == Role.STREET -> List.of(a);
      default -> List.of();
    };
  }

  /** A slab of 10 by 16 ft whose one joint ends a foot short of the side. */
  private static Desk judged() {
    Joint joint =
        Joint.of(
            "J7",
            JointKind.CONTRACTION,
            org.jointwright.shape.Path.straight(new Point(0, 96), new Point(108, 96)),
            Purpose.SPACING);
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(120, 0), new Point(120, 192), new Point(0, 192)));
    Plan plan =
        Plan.EMPTY.withSlabs(List.of(Slab.of("pad", outline).withLaid(List.of(joint), List.of())));
    Desk desk = Desk.opened(plan, Path.of("pad.jointwright.json")).fitted();
    Wish wish = desk.laying().wish().orElseThrow();
    Answer answer = Answer.asItStands(wish.plan());
    return desk.answered(
        new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement()));
  }
}
