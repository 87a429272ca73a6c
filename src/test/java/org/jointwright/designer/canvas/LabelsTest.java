package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.PlanFiles;
import org.jointwright.designer.state.Desk;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.View;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.text.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelsTest {
  private static Plan crowded = Plan.EMPTY;

  @BeforeAll
  static void layTheCrowdedPlan() {
    crowded =
        Answer.laid(
                open(
                    Path.of(
                        "src/test/resources/cases/crowded/drive-walk-and-pad.jointwright.json")))
            .plan();
  }

  @ParameterizedTest
  @ValueSource(strings = {"truck-yard", "shed-pad-with-a-drain"})
  void theNumberOfABoxOutLeavesTheObjectToBeSeen(String sample) {
    Plan plan = read(sample);
    Layout layout = Answer.laid(plan).layout();
    Desk desk = Desk.begun(layout.plan()).fitted();
    View view = desk.viewport().view();
    List<Mark.Group> tags =
        Labels.of(Known.of(desk), desk, new Places(), Words.english(UnitSystem.FEET_INCHES))
            .stream()
            .filter(Mark.Group.class::isInstance)
            .map(Mark.Group.class::cast)
            .toList();
    assertThat(tags).hasSizeGreaterThan(plan.fixed().size());
    for (FixedObject object : plan.fixed()) {
      Box seen = view.boxOf(object.shape().ring());
      assertThat(tags)
          .as("over " + object.id())
          .noneMatch(tag -> corners(seen).stream().anyMatch(paper(tag)::holds));
    }
  }

  /** A walk that meets a drive has corners amid a side: their letters stand beside the line. */
  @ParameterizedTest
  @ValueSource(strings = {"drive-approach-walk", "shed-pad-with-a-drain"})
  void noLetterIsStruckByALineThatMeetsItsCorner(String sample) {
    Desk desk = Desk.begun(Answer.laid(read(sample)).plan()).resized(744, 760).fitted();
    View view = desk.viewport().view();
    Known known = Known.of(desk);
    // What else stands on the paper leaves each letter its worst place but one.
    Places taken = new Places();
    known
        .corners()
        .forEach(
            c -> {
              Point first = view.on(c.at()).plus(view.heading(c.out()).times(17));
              taken.take(Box.of(first, first).grown(2));
            });
    List<Mark> marks = Labels.of(known, desk, taken, Words.english(UnitSystem.FEET_INCHES));
    for (Corners.Corner corner : known.corners()) {
      Mark.Words letter =
          marks.stream()
              .filter(Mark.Words.class::isInstance)
              .map(Mark.Words.class::cast)
              .filter(w -> w.text().equals(corner.letter()))
              .findFirst()
              .orElseThrow();
      Point middle = InSight.room(letter).centre();
      assertThat(corner.lines()).isNotEmpty();
      assertThat(corner.lines())
          .as(corner.letter())
          .allSatisfy(e -> assertThat(view.on(e).distance(middle)).isGreaterThan(5));
    }
  }

  /** Letters of openings stand among joints: none is struck by one, nor by a number’s leader. */
  @Test
  void noLetterOfAnOpeningIsStruckByAJointOrALeader() {
    int letters = 0;
    List<String> struck = new ArrayList<>();
    List<Plan> plans = new ArrayList<>(List.of(crowded));
    LaidPlans.names().forEach(n -> plans.add(LaidPlans.plan(n)));
    for (Plan plan : plans) {
      for (Point paper : List.of(new Point(744, 760), new Point(471, 493))) {
        Desk desk = Desk.begun(plan).resized(paper.x(), paper.y()).fitted();
        Known known = Known.of(desk);
        List<Mark> marks =
            Labels.of(known, desk, new Places(), Words.english(UnitSystem.FEET_INCHES));
        List<Edge> lines = new ArrayList<>();
        for (Slab slab : plan.slabs()) {
          slab.joints().forEach(j -> lines.addAll(desk.viewport().view().on(j.path()).edges()));
        }
        for (Mark m : marks) {
          if (m instanceof Mark.Line leader) {
            lines.addAll(leader.path().edges());
          }
        }
        for (Corners.Corner corner : known.corners()) {
          for (Mark m : marks) {
            if (m instanceof Mark.Words w && w.text().equals(corner.letter())) {
              letters++;
              Point middle = InSight.room(w).centre();
              if (corner.opening().isPresent()
                  && lines.stream().anyMatch(e -> e.distance(middle) < 5)) {
                struck.add(plan.job().name() + " " + w.text() + " on " + paper);
              }
            }
          }
        }
      }
    }
    assertThat(letters).isGreaterThan(500);
    assertThat(struck).isEmpty();
  }

  /** A pad of 6 ft by 8 ft with an opening of 2 ft amid it, in a window of several sizes. */
  @ParameterizedTest
  @ValueSource(ints = {300, 450, 600, 744, 1600})
  void lettersOfAnOpeningStandOnNoRimOrAreLeftOut(int width) {
    Plan plan = crowded;
    Desk desk = Desk.begun(plan).resized(width, width).fitted();
    View view = desk.viewport().view();
    Known known = Known.of(desk);
    List<Edge> rims = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      rims.addAll(slab.outline().ring().edges());
      slab.openings().forEach(o -> rims.addAll(o.outline().ring().edges()));
    }
    List<String> letters =
        known.corners().stream()
            .filter(c -> c.opening().isPresent())
            .map(Corners.Corner::letter)
            .toList();
    List<Mark.Words> found =
        Labels.of(known, desk, new Places(), Words.english(UnitSystem.FEET_INCHES)).stream()
            .filter(Mark.Words.class::isInstance)
            .map(Mark.Words.class::cast)
            .filter(w -> letters.contains(w.text()))
            .toList();
    assertThat(letters).hasSize(4);
    if (width == 1600) {
      assertThat(found).hasSize(4);
    }
    assertThat(found)
        .allSatisfy(
            w ->
                assertThat(rims)
                    .allSatisfy(
                        e ->
                            assertThat(view.on(e).distance(InSight.room(w).centre()))
                                .isGreaterThan(5)));
  }

  private static List<Point> corners(Box b) {
    return List.of(
        b.centre(),
        new Point(b.minX(), b.minY()),
        new Point(b.maxX(), b.minY()),
        new Point(b.maxX(), b.maxY()),
        new Point(b.minX(), b.maxY()));
  }

  /** The paper that a tag covers, its first mark. */
  private static Box paper(Mark.Group tag) {
    return ((Mark.Area) tag.marks().getFirst()).rings().getFirst().box();
  }

  private static Plan read(String sample) {
    return open(Path.of("samples", sample + ".jointwright.json"));
  }

  private static Plan open(Path file) {
    return switch (PlanFiles.open(file)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }
}
