package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What goes on in one straight line is one line; what turns, or is made otherwise, is not. */
class StraightsTest {
  private static final Joint LEFT = joint("L", 0, 0, 60, 0);

  @Test
  void jointsGoOnWhicheverWayRoundTheyWereDrawn() {
    for (Joint a : List.of(LEFT, joint("L", 60, 0, 0, 0))) {
      for (Joint b : List.of(joint("R", 60, 0, 100, 0), joint("R", 100, 0, 60, 0))) {
        Straights.Run run = only(a, b);
        assertThat(List.of(run.path().start().x(), run.path().end().x()))
            .containsExactlyInAnyOrder(0.0, 100.0);
        assertThat(run.path().length()).isCloseTo(100, within(1e-9));
        // The joints follow each other as the line runs.
        assertThat(ids(run)).isEqualTo(run.path().start().x() == 0 ? "LR" : "RL");
      }
    }
  }

  @Test
  void aLineIsPutTogetherThoughItsPartsComeInAnyOrder() {
    Straights.Run run =
        only(LEFT, joint("F", 100, 0, 160, 0), joint("R", 60, 0, 100, 0), joint("E", -20, 0, 0, 0));
    assertThat(ids(run)).isEqualTo("ELRF");
    assertThat(run.path()).isEqualTo(Path.straight(p(-20, 0), p(160, 0)));
  }

  @Test
  void linesComeInTheOrderOfTheirFirstParts() {
    List<Straights.Run> runs =
        Straights.of(
            List.of(joint("A", 0, 50, 60, 50), LEFT, joint("R", 60, 0, 100, 0), joint("U", 9, 9)));
    assertThat(runs).extracting(StraightsTest::ids).containsExactly("A", "LR", "U");
  }

  @Test
  void anEndAHairOffTheLineIsNoBendAndOneFartherOffIs() {
    assertThat(runs(joint("A", 0, 0, 60, 0.02), joint("B", 60, 0.02, 120, 0))).isEqualTo(1);
    assertThat(runs(joint("A", 0, 0, 60, 0.05), joint("B", 60, 0.05, 120, 0))).isEqualTo(2);
    assertThat(runs(joint("A", 0, 0, 60, -0.05), joint("B", 60, -0.05, 120, 0))).isEqualTo(2);
  }

  @Test
  void endsThatDoNotMeetAreTwoLines() {
    assertThat(runs(LEFT, joint("B", 60.09, 0, 120, 0))).isEqualTo(1);
    assertThat(runs(LEFT, joint("B", 60.11, 0, 120, 0))).isEqualTo(2);
    assertThat(runs(LEFT, joint("B", 120, 0, 60.11, 0))).isEqualTo(2);
    assertThat(runs(joint("B", 60.11, 0, 120, 0), LEFT)).isEqualTo(2);
    assertThat(runs(joint("B", 120, 0, 60.11, 0), joint("L", 60, 0, 0, 0))).isEqualTo(2);
  }

  @Test
  void aJointThatRunsBackOverAnotherIsNoPartOfItsLine() {
    // Short of the first one's start, and past it, from each end and drawn either way.
    for (double to : new double[] {20, -20}) {
      assertThat(runs(LEFT, joint("B", 60, 0, to, 0))).isEqualTo(2);
      assertThat(runs(LEFT, joint("B", to, 0, 60, 0))).isEqualTo(2);
      assertThat(runs(joint("L", 60, 0, 0, 0), joint("B", 60, 0, to, 0))).isEqualTo(2);
      assertThat(runs(joint("L", 60, 0, 0, 0), joint("B", to, 0, 60, 0))).isEqualTo(2);
    }
  }

  @Test
  void aJointListedTwiceIsTwoLines() {
    assertThat(runs(LEFT, joint("B", 0, 0, 60, 0))).isEqualTo(2);
    assertThat(runs(LEFT, joint("B", 60, 0, 0, 0))).isEqualTo(2);
  }

  @Test
  void whatIsMadeOtherwiseIsCutByItself() {
    Joint on = joint("R", 60, 0, 100, 0);
    Optional<How> sawn = Optional.of(How.SAWN);
    Optional<Length> inch = Optional.of(Length.inches(1));
    assertThat(runs(LEFT, made(on, sawn, Optional.empty(), Optional.empty()))).isEqualTo(2);
    assertThat(runs(LEFT, made(on, Optional.empty(), inch, Optional.empty()))).isEqualTo(2);
    assertThat(runs(LEFT, made(on, Optional.empty(), Optional.empty(), inch))).isEqualTo(2);
    assertThat(runs(made(LEFT, sawn, inch, inch), made(on, sawn, inch, inch))).isEqualTo(1);
  }

  @Test
  void anArcIsALineOfItsOwn() {
    Edge bow = Arc.through(p(60, 0), p(80, 1), p(100, 0));
    Joint arc = Joint.of("R", JointKind.CONTRACTION, Path.of(bow), Purpose.SPACING);
    assertThat(Straights.of(List.of(LEFT, arc)))
        .extracting(r -> r.path().edges().getFirst())
        .containsExactly(LEFT.path().edges().getFirst(), bow);
    assertThat(runs(arc, LEFT)).isEqualTo(2);
  }

  @Test
  void fineChordsAreTheirArcAndCoarseOnesStayChords() {
    Edge arc = Arc.through(p(100, 0), p(0, 100), p(-100, 0));
    List<Straights.Run> fine = Straights.of(List.of(chords(arc, 48)));
    assertThat(fine).hasSize(1);
    assertThat(fine.getFirst().path().edges()).hasSize(1);
    assertThat(fine.getFirst().path().length()).isCloseTo(arc.length(), within(1e-6));
    assertThat(Straights.of(List.of(chords(arc, 6)))).hasSize(6);
  }

  @Test
  void chordsWithACornerOffTheirArcStayChords() {
    List<Point> points = new ArrayList<>(points(Arc.through(p(100, 0), p(0, 100), p(-100, 0)), 48));
    points.set(7, points.get(7).times(1.0005));
    Joint off = Joint.of("C", JointKind.CONTRACTION, Path.through(points), Purpose.SPACING);
    assertThat(Straights.of(List.of(off))).hasSize(48);
  }

  @Test
  void pointsOnOneLineAreOneLine() {
    Straights.Run run = only(joint("A", 0, 0, 10, 0, 25, 0, 60, 0));
    assertThat(run.path()).isEqualTo(LEFT.path());
    assertThat(ids(run)).isEqualTo("A");
  }

  @Test
  void aBendOfTwoPiecesIsTwoLinesHoweverSlight() {
    assertThat(runs(joint("A", 0, 0, 60, 0.2, 120, 0))).isEqualTo(2);
  }

  @Test
  void whatClosesIsCutSideBySide() {
    assertThat(runs(joint("A", 0, 0, 60, 0, 60, 60, 0, 60, 0, 0))).isEqualTo(4);
  }

  private static Straights.Run only(Joint... joints) {
    List<Straights.Run> runs = Straights.of(List.of(joints));
    assertThat(runs).hasSize(1);
    return runs.getFirst();
  }

  private static int runs(Joint... joints) {
    return Straights.of(List.of(joints)).size();
  }

  private static String ids(Straights.Run run) {
    return String.join("", run.joints().stream().map(Joint::id).toList());
  }

  private static Joint chords(Edge arc, int count) {
    return Joint.of("C", JointKind.CONTRACTION, Path.through(points(arc, count)), Purpose.SPACING);
  }

  private static List<Point> points(Edge arc, int count) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      points.add(arc.at((double) i / count));
    }
    return points;
  }

  private static Joint made(
      Joint j, Optional<How> how, Optional<Length> depth, Optional<Length> width) {
    return new Joint(
        j.id(), j.kind(), j.path(), false, j.purpose(), how, depth, width, Kept.NOTHING);
  }

  /** A joint through some points; from one point up by ten inches. */
  private static Joint joint(String id, double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(p(xy[i], xy[i + 1]));
    }
    if (points.size() == 1) {
      points.add(points.getFirst().plus(p(0, 10)));
    }
    return Joint.of(id, JointKind.CONTRACTION, Path.through(points), Purpose.SPACING);
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }
}
