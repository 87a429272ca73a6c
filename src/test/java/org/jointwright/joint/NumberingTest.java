package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** The numbers on the sheet: what is cut, what is formed, what is filled, what is boxed out. */
class NumberingTest {
  @Test
  void oneRunOfNumbersForTheJobWorkByWork() {
    Sketch near =
        Sketch.rectangle(240, 120)
            .post(200, 60, 8)
            .boxOut(188, 48, 212, 48, 212, 72, 188, 72)
            .filler(0, 0, 0, 120)
            .joint(JointKind.CONSTRUCTION, 120, 0, 120, 120)
            .joint(60, 0, 60, 120);
    Sketch far =
        Sketch.polygon(0, 200, 240, 200, 240, 320, 0, 320)
            .filler(0, 200, 0, 320)
            .joint(120, 200, 120, 320);
    assertThat(said(near.beside("far", far).plan()))
        .containsExactly(
            "1 CUT slab J4",
            "2 CUT far J2",
            "3 FORM slab J3",
            "4 SET slab J2",
            "5 SET far J1",
            "6 BOX_OUT slab J1");
  }

  @Test
  void jointsToCutAreNumberedInCuttingOrderAndFillerAsListed() {
    Sketch slab =
        Sketch.rectangle(240, 120)
            .joint(0, 60, 240, 60)
            .joint(160, 0, 160, 120)
            .joint(80, 0, 80, 120)
            .filler(240, 0, 240, 120)
            .filler(0, 0, 0, 120);
    assertThat(said(slab.plan()))
        .containsExactly(
            "1 CUT slab J3", "2 CUT slab J2", "3 CUT slab J1", "4 SET slab J4", "5 SET slab J5");
  }

  @Test
  void whatIsCutInOneLineHasOneNumberAndFillerOneForEach() {
    Sketch slab =
        Sketch.rectangle(240, 120)
            .joint(120, 0, 120, 60)
            .joint(120, 60, 120, 120)
            .filler(0, 0, 0, 60)
            .filler(0, 60, 0, 120);
    Numbering numbers = Numbering.of(slab.plan());
    assertThat(said(numbers)).containsExactly("1 CUT slab J1 J2", "2 SET slab J3", "3 SET slab J4");
    assertThat(numbers.items().getFirst().path()).isEqualTo(line(120, 0, 120, 120));
    assertThat(numbers.items().getLast().path()).isEqualTo(line(0, 60, 0, 120));
  }

  @Test
  void aLineListedTwiceHasOneNumber() {
    assertThat(said(slab().filler(0, 60, 240, 60).filler(0, 60, 240, 60)))
        .containsExactly("1 SET slab J1");
    assertThat(said(slab().joint(0, 60, 240, 60).joint(240, 60, 0, 60)))
        .containsExactly("1 CUT slab J1");
    assertThat(said(slab().filler(0, 60, 240, 60).filler(0, 60.4, 240, 60.4)))
        .containsExactly("1 SET slab J1");
    assertThat(said(slab().filler(0, 60, 240, 60).filler(0, 60.6, 240, 60.6))).hasSize(2);
  }

  @Test
  void aPartOfALineHasNoNumberOfItsOwnWhicheverCameFirst() {
    assertThat(said(slab().filler(60, 60, 200, 60).filler(0, 60, 240, 60)))
        .containsExactly("1 SET slab J2");
    assertThat(said(slab().filler(0, 60, 240, 60).filler(60, 60, 200, 60)))
        .containsExactly("1 SET slab J1");
  }

  @Test
  void linesThatShareAStretchOnlyKeepTheirNumbers() {
    // One runs on past the other at either end; an arc has the ends of the other only.
    assertThat(said(slab().filler(0, 60, 160, 60).filler(80, 60, 240, 60))).hasSize(2);
    assertThat(said(slab().filler(80, 60, 240, 60).filler(160, 60, 0, 60))).hasSize(2);
    assertThat(said(slab().filler(0, 60, 240, 60).filler(0, 60, 120, 80, 240, 60))).hasSize(2);
    Path bow = Path.of(Arc.through(new Point(0, 60), new Point(120, 80), new Point(240, 60)));
    Sketch bowed =
        slab()
            .filler(0, 60, 240, 60)
            .add(Joint.of("J2", JointKind.ISOLATION, bow, Purpose.ISOLATION));
    assertThat(said(bowed)).hasSize(2);
  }

  @Test
  void fillerRoundABoxOutGoesWithItAndFillerThatGoesOnDoesNot() {
    Sketch slab =
        slab()
            .post(120, 60, 8)
            .bareBoxOut(108, 48, 132, 48, 132, 72, 108, 72)
            .filler(108, 48, 132, 48, 132, 72)
            .filler(132.3, 72.3, 108, 72, 107.6, 48)
            .filler(108, 60, 0, 60)
            .filler(132, 60, 240, 60)
            .joint(108, 48, 132, 48);
    assertThat(said(slab))
        .containsExactly("1 CUT slab J5", "2 SET slab J3", "3 SET slab J4", "4 BOX_OUT slab J1 J2");
  }

  @Test
  void fillerThatCrossesABoxOutFromSideToSideIsItsOwn() {
    Sketch slab =
        slab()
            .post(120, 60, 8)
            .bareBoxOut(108, 48, 132, 48, 132, 72, 108, 72)
            .filler(108, 60, 132, 60);
    assertThat(said(slab)).containsExactly("1 SET slab J1", "2 BOX_OUT slab ");
  }

  @Test
  void boxOutsAreNumberedByTheirObjectsAndOneThatIsSharedOnce() {
    Plan plan = slab().plan();
    Slab boxed =
        plan.slabs()
            .getFirst()
            .withLaid(
                List.of(),
                List.of(
                    boxOut("c", 108, 48),
                    boxOut("b", 20, 48),
                    boxOut("a", 108, 48),
                    boxOut("d", 20, 48.2)));
    assertThat(Numbering.of(plan.withSlabs(List.of(boxed))).items())
        .extracting(i -> i.number() + " " + i.boxOut().orElseThrow().fixed())
        .containsExactly("1 a", "2 b", "3 d");
  }

  @Test
  void aBoxOutsNumberRunsRoundItsEdge() {
    Sketch slab = slab().post(120, 60, 8).bareBoxOut(108, 48, 132, 48, 132, 72, 108, 72);
    Numbering.Item item = Numbering.of(slab.plan()).items().getFirst();
    assertThat(item.path().length()).isEqualTo(96);
    assertThat(item.path().isClosed()).isTrue();
  }

  @Test
  void everyJointFindsItsNumber() {
    Sketch sketch =
        slab()
            .joint(120, 0, 120, 60)
            .joint(120, 60, 120, 120)
            .filler(0, 0, 0, 120)
            .filler(0, 20, 0, 60)
            .post(180, 60, 8)
            .boxOut(168, 48, 192, 48, 192, 72, 168, 72);
    Plan plan = sketch.plan();
    Numbering numbers = Numbering.of(plan);
    assertThat(numbers.of(plan, "slab", "J1")).contains(1);
    assertThat(numbers.of(plan, "slab", "J2")).contains(1);
    assertThat(numbers.of(plan, "slab", "J3")).contains(2);
    // Part of another, so it is found under that one’s number.
    assertThat(numbers.of(plan, "slab", "J4")).contains(2);
    assertThat(numbers.of(plan, "slab", "J5")).contains(3);
    assertThat(numbers.of(plan, "slab", "J6")).isEmpty();
    assertThat(numbers.of(plan, "yard", "J1")).isEmpty();
  }

  @Test
  void aJointIsFoundByItsPlaceOnlyAmongItsKindAndByItselfOnlyInItsSlab() {
    Plan plan = slab().joint(0, 60, 240, 60).plan();
    Numbering numbers = Numbering.of(plan);
    Joint own = plan.slabs().getFirst().joints().getFirst();
    assertThat(numbers.of("slab", own).orElseThrow().number()).isEqualTo(1);
    Joint part = own.withId("J9").withPath(line(60, 60, 120, 60));
    assertThat(numbers.of("yard", part).orElseThrow().number()).isEqualTo(1);
    assertThat(numbers.of("slab", part.withKind(JointKind.ISOLATION))).isEmpty();
    assertThat(numbers.of("slab", part.withPath(line(60, 60, 60, 120)))).isEmpty();
  }

  @Test
  void aJointAlongABoxOutIsNotFoundUnderItsNumber() {
    Plan plan = slab().post(120, 60, 8).boxOut(108, 48, 132, 48, 132, 72, 108, 72).plan();
    Joint filler = plan.slabs().getFirst().joints().getFirst();
    Numbering numbers = Numbering.of(plan);
    assertThat(numbers.of("slab", filler)).isPresent();
    assertThat(numbers.of("slab", filler.withId("J9").withPath(line(108, 48, 132, 48)))).isEmpty();
  }

  private static BoxOut boxOut(String fixed, double x, double y) {
    return new BoxOut(
        fixed,
        Outline.of(
            List.of(
                new Point(x, y),
                new Point(x + 24, y),
                new Point(x + 24, y + 24),
                new Point(x, y + 24))),
        Kept.NOTHING);
  }

  private static Sketch slab() {
    return Sketch.rectangle(240, 120);
  }

  private static Path line(double x0, double y0, double x1, double y1) {
    return Path.straight(new Point(x0, y0), new Point(x1, y1));
  }

  private static List<String> said(Sketch sketch) {
    return said(sketch.plan());
  }

  private static List<String> said(Plan plan) {
    return said(Numbering.of(plan));
  }

  private static List<String> said(Numbering numbers) {
    return numbers.items().stream()
        .map(
            i ->
                i.number()
                    + " "
                    + i.work()
                    + " "
                    + i.slab()
                    + " "
                    + String.join(" ", i.joints().stream().map(Joint::id).toList()))
        .toList();
  }
}
