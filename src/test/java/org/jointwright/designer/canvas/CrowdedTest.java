package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.check.judge.Checks;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What stands on the canvas where much is to be said at once. */
class CrowdedTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Joint joint(
      String id, JointKind kind, double x1, double y1, double x2, double y2) {
    return Joint.of(id, kind, Path.straight(new Point(x1, y1), new Point(x2, y2)), Purpose.SPACING);
  }

  private static Desk desk(Slab slab) {
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab));
    Layout layout = Layouts.of(plan);
    Desk desk = Desk.begun(plan);
    return desk.answered(new Laid(1, plan, layout, Checks.judge(layout))).fitted();
  }

  /** A lot with one slanted side, and joints that come to points along it. */
  private static Slab lot() {
    List<Joint> joints = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      double x = 600 - 84 * i;
      joints.add(joint("J" + i, JointKind.CONTRACTION, x, 0, x, Math.min(432, (720 - x) * 6 / 7)));
    }
    joints.add(joint("J7", JointKind.CONTRACTION, 682, 0, 690, 25.714));
    return Slab.of(
            "lot",
            Outline.of(
                List.of(
                    new Point(0, 0), new Point(720, 0), new Point(216, 432), new Point(0, 432))))
        .withLaid(joints, List.of());
  }

  @Test
  void theTapeOfAPickedJointRunsClearOfTheFlags() {
    Desk desk = desk(lot());
    List<Box> flags = FlagMarks.of(desk).cloths();
    assertThat(flags).hasSizeGreaterThan(5);
    for (Joint j : desk.plan().slabs().getFirst().joints()) {
      List<Edge> tape =
          tape(desk).picked("lot", j).stream()
              .filter(m -> m instanceof Mark.Line l && l.role() == Role.STRING && l.width() == 2)
              .flatMap(m -> ((Mark.Line) m).path().edges().stream())
              .toList();
      assertThat(tape).as(j.id()).isNotEmpty();
      assertThat(flags).as(j.id()).noneMatch(f -> tape.stream().anyMatch(e -> strikes(e, f)));
    }
  }

  @Test
  void noFigureOfTheTapeIsCutOffAtThePapersEdge() {
    Desk desk = desk(lot());
    for (Joint j : desk.plan().slabs().getFirst().joints()) {
      for (Mark m : tape(desk).picked("lot", j)) {
        if (m instanceof Mark.Words w) {
          double half = Typeface.of(w.weight()).width(w.text(), w.size()) / 2;
          assertThat(w.at().x()).as(w.text()).isBetween(half, desk.viewport().width() - half);
        }
      }
    }
  }

  private static JointTape tape(Desk desk) {
    return new JointTape(desk, Known.of(desk), FlagMarks.of(desk), WORDS);
  }

  private static boolean strikes(Edge line, Box box) {
    for (double t = 0; t <= 1; t += 1 / 512.0) {
      if (box.holds(line.at(t))) {
        return true;
      }
    }
    return false;
  }

  @Test
  void thePickedZonesOutlineStrikesNoName() {
    Outline zone =
        Outline.of(
            List.of(
                new Point(-24, 168),
                new Point(240, 216),
                new Point(240, 264),
                new Point(-24, 216)));
    Slab slab =
        Slab.of(
                "drive",
                Outline.of(
                    List.of(
                        new Point(0, 0),
                        new Point(216, 0),
                        new Point(216, 480),
                        new Point(0, 480))))
            .withKeepClear(List.of(KeepClear.of("sewer", zone)));
    Desk desk = desk(slab).picking(new Pick.AtZone("drive", 0));
    List<Edge> outline = desk.viewport().view().on(new Path(zone.ring().edges())).edges();
    List<Mark.Words> said =
        Labels.of(Known.of(desk), desk, new Places(), WORDS).stream()
            .filter(Mark.Words.class::isInstance)
            .map(Mark.Words.class::cast)
            .toList();
    assertThat(said).extracting(Mark.Words::text).contains("drive", "sewer");
    for (Mark.Words w : said) {
      assertThat(outline).as(w.text()).noneMatch(e -> e.distance(middle(w)) < w.size() / 2);
    }
  }

  private static Point middle(Mark.Words w) {
    return w.at().plus(new Point(0, -w.size() / 3));
  }

  @Test
  void noNumberCoversAHandleOfAPickedMark() {
    Slab slab =
        Slab.of(
                "drive",
                Outline.of(
                    List.of(
                        new Point(0, 0),
                        new Point(432, 0),
                        new Point(432, 300),
                        new Point(0, 300))))
            .withEdges(
                Map.of(
                    0,
                    EdgeSetting.against(Against.BUILDING)
                        .withFeatures(List.of(Feature.of(FeatureKind.GARAGE_DOOR, 24, 216)))))
            .withLaid(List.of(joint("J1", JointKind.ISOLATION, 0, 0, 432, 0)), List.of());
    Desk desk = desk(slab).picking(new Pick.AtFeature(Ref.outline("drive", 0), 0));
    View view = desk.viewport().view();
    List<Mark.Group> tags =
        Labels.of(Known.of(desk), desk, new Places(), WORDS).stream()
            .filter(Mark.Group.class::isInstance)
            .map(Mark.Group.class::cast)
            .toList();
    assertThat(tags).isNotEmpty();
    for (double x : new double[] {24, 216}) {
      Point handle = view.on(new Point(x, 0));
      assertThat(tags).noneMatch(t -> box(t).holds(handle));
    }
  }

  private static Box box(Mark.Group tag) {
    return ((Mark.Area) tag.marks().getFirst()).rings().getFirst().box();
  }
}
