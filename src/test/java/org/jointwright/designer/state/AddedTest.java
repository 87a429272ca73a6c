package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.facts.Deed;
import org.jointwright.designer.facts.Facts;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.facts.Row;
import org.jointwright.designer.hand.Arrows;
import org.jointwright.designer.hand.Gesture;
import org.jointwright.designer.hand.Gestures;
import org.jointwright.designer.ready.Addition;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Posts and openings hang on the hand until they are set down where it wants them. */
class AddedTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Slab slab(String id, double x) {
    return Slab.of(
        id,
        Outline.of(
            List.of(
                new Point(x, 0),
                new Point(x + 240, 0),
                new Point(x + 240, 360),
                new Point(x, 360))));
  }

  private static Desk desk() {
    Plan plan = Plan.EMPTY.withSlabs(List.of(slab("drive", 0), slab("pad", 240)));
    return Desk.begun(plan).fitted().picking(new Pick.WholeSlab("drive"));
  }

  private static Desk post() {
    return SetDown.adding(desk(), "drive", Addition.OBJECT, "post");
  }

  private static Pointer at(Desk desk, double x, double y) {
    Point paper = desk.viewport().toPaper(new Point(x, y));
    return Pointer.on(desk.viewport(), paper.x(), paper.y(), false);
  }

  private static Desk clicked(Desk desk, double x, double y) {
    Gesture gesture = Gestures.begin(desk, at(desk, x, y), "slab");
    Desk pressed = gesture.press(desk, at(desk, x, y));
    return gesture.release(pressed, at(desk, x, y));
  }

  private static FixedObject only(Desk desk) {
    assertThat(desk.plan().fixed()).hasSize(1);
    return desk.plan().fixed().getFirst();
  }

  private static Point middle(FixedObject object) {
    return object.shape().ring().box().centre();
  }

  @Test
  void aPostGoesWhereTheHandClicksAtAWholeInch() {
    Desk held = post();
    assertThat(held.plan().fixed()).as("not on the plan yet").isEmpty();
    assertThat(held.history().canUndo()).isFalse();
    Desk placed = clicked(held, 100.3, 199.6);
    assertThat(middle(only(placed)).distance(new Point(100, 200))).isLessThan(1e-9);
    assertThat(only(placed).id()).isEqualTo("post 1");
    assertThat(placed.picked()).isEqualTo(new Pick.AtFixed("post 1"));
    assertThat(placed.hand()).isEqualTo(InHand.EMPTY);
    assertThat(placed.undone().plan()).isEqualTo(desk().plan());
  }

  @Test
  void itBelongsToTheSlabThatTheHandIsOver() {
    assertThat(only(clicked(post(), 300, 100)).slab()).isEqualTo("pad");
  }

  @Test
  void besideEverySlabItIsToldAndStaysInTheHand() {
    Desk told = clicked(post(), 100, -30);
    assertThat(told.notice().orElseThrow().key()).isEqualTo("window.notice.besideSlab");
    assertThat(told.plan().fixed()).isEmpty();
    assertThat(told.hand().addition()).isPresent();
  }

  @Test
  void withoutAMouseItComesToTheMiddleOfWhatIsSeenAndTheArrowsMoveIt() {
    Desk near = desk().withSight(s -> s.with(s.viewport().centredOn(new Point(60, 90)), false));
    Desk held = SetDown.adding(near, "drive", Addition.OBJECT, "post");
    Point seen = near.viewport().clear().centre();
    Point was = held.hand().addition().orElseThrow().at();
    assertThat(was.distance(seen)).isLessThan(1);
    Desk moved = Arrows.pressed(Arrows.pressed(held, new Point(1, 0), 12), new Point(0, 1), 1);
    Point by = middle(only(SetDown.place(moved, "slab"))).minus(was);
    assertThat(by.distance(new Point(12, 1))).isLessThan(1e-9);
  }

  @Test
  void whereTheMiddleIsTakenOrOfNoSlabItWaitsOverAFreePlace() {
    Desk apart = desk().withSight(s -> s.with(s.viewport().centredOn(new Point(-900, 0)), false));
    Desk held = SetDown.adding(apart, "drive", Addition.OPENING, "");
    Point at = held.hand().addition().orElseThrow().at();
    assertThat(held.plan().slab("drive").orElseThrow().region().contains(at)).isTrue();
    Desk two = SetDown.adding(SetDown.place(held, "slab"), "drive", Addition.OBJECT, "post");
    assertThat(
            Addition.clear(
                two.plan(),
                two.plan().slab("drive").orElseThrow(),
                two.hand().addition().orElseThrow().at()))
        .isGreaterThan(6);
  }

  @Test
  void distancesFromTwoSidesAreTypedBeforeItIsSetDown() {
    Desk held = typed(typed(post(), "fixed-from-3", "5'"), "fixed-from-0", "6'6");
    Desk cleanout = chosen(held, FixedKind.CLEANOUT);
    Desk wide = typed(cleanout, "fixed-across", "4");
    Desk placed = pressed(wide, "set-down");
    assertThat(middle(only(placed)).distance(new Point(60, 78))).isLessThan(1e-9);
    assertThat(only(placed).kind()).isEqualTo(FixedKind.CLEANOUT);
    assertThat(only(placed).id()).isEqualTo("cleanout 1");
    assertThat(only(placed).shape().ring().box().width()).isCloseTo(4, within(1e-6));
  }

  /** A street that is not square to the sides, and a flare beside it. */
  private static Desk skew() {
    Slab skew =
        Slab.of(
            "drive",
            Outline.of(
                List.of(
                    new Point(0, 0),
                    new Point(270, -3),
                    new Point(240, 116),
                    new Point(240, 360),
                    new Point(0, 360))));
    Desk desk = Desk.begun(Plan.EMPTY.withSlabs(List.of(skew))).fitted();
    return SetDown.adding(
        desk.picking(new Pick.WholeSlab("drive")), "drive", Addition.OBJECT, "post");
  }

  private static double off(Desk desk, int side) {
    Edge e = desk.plan().slabs().getFirst().outline().ring().edges().get(side);
    Point at = desk.hand().addition().orElseThrow().at();
    return at.minus(e.start()).dot(e.direction(0).left());
  }

  @Test
  void twoTypedDistancesHoldBothWhereTheSidesAreNotSquare() {
    Desk held = typed(typed(skew(), "fixed-from-0", "8'6"), "fixed-from-4", "6'3");
    assertThat(off(held, 0)).isCloseTo(102, within(1e-9));
    assertThat(off(held, 4)).isCloseTo(75, within(1e-9));
    Desk again = typed(held, "fixed-from-0", "4'");
    assertThat(off(again, 0)).isCloseTo(48, within(1e-9));
    assertThat(off(again, 4)).isCloseTo(75, within(1e-9));
  }

  @Test
  void theRowsStayWhereTheyAreOnceAHandTypesUntilThePointerLeadsIt() {
    Desk held = skew();
    List<String> before = ids(held);
    assertThat(before).contains("fixed-from-2").doesNotContain("fixed-from-1");
    Desk typed = typed(held, "fixed-from-0", "2'");
    assertThat(ids(typed)).isEqualTo(before);
    assertThat(ids(Arrows.pressed(typed, new Point(1, 0), 1))).isEqualTo(before);
    Desk led = SetDown.lead(typed, at(typed, 150, 30));
    assertThat(ids(led)).contains("fixed-from-1").doesNotContain("fixed-from-2");
  }

  private static List<String> ids(Desk desk) {
    return facts(desk).rows().stream().map(Row::id).toList();
  }

  @Test
  void anOpeningIsSizedAndSetDownAsOneStep() {
    Desk held = SetDown.adding(desk(), "drive", Addition.OPENING, "");
    Desk placed = clicked(typed(typed(held, "opening-wide", "3'"), "opening-deep", "1'"), 100, 200);
    Slab drive = placed.plan().slab("drive").orElseThrow();
    assertThat(drive.openings()).hasSize(1);
    assertThat(drive.openings().getFirst().outline().ring().box().width())
        .isCloseTo(36, within(1e-6));
    assertThat(drive.openings().getFirst().outline().ring().box().height())
        .isCloseTo(12, within(1e-6));
    assertThat(placed.picked()).isEqualTo(new Pick.AtOpening("drive", 0));
    assertThat(placed.undone().plan()).isEqualTo(desk().plan());
  }

  @Test
  void anOpeningOverAnEdgeIsToldAndStaysInTheHand() {
    Desk told = clicked(SetDown.adding(desk(), "drive", Addition.OPENING, ""), 5, 200);
    assertThat(told.notice().orElseThrow().key()).isEqualTo("window.notice.noOpening");
    assertThat(told.plan()).isEqualTo(desk().plan());
    assertThat(told.hand().addition()).isPresent();
  }

  @Test
  void itCanBePutAway() {
    Desk away = pressed(post(), "stop-drawing");
    assertThat(away.hand()).isEqualTo(InHand.EMPTY);
    assertThat(away.plan()).isEqualTo(desk().plan());
    assertThat(away.picked()).isEqualTo(new Pick.WholeSlab("drive"));
  }

  private static Facts facts(Desk desk) {
    return FactsOf.desk(desk, WORDS);
  }

  private static Desk typed(Desk desk, String row, String text) {
    Row.Typed typed =
        facts(desk).rows().stream()
            .filter(Row.Typed.class::isInstance)
            .map(Row.Typed.class::cast)
            .filter(r -> r.id().equals(row))
            .findFirst()
            .orElseThrow();
    return typed.change().apply(text).apply(desk);
  }

  private static Desk chosen(Desk desk, FixedKind kind) {
    Optional<Row.Choice> choice =
        facts(desk).rows().stream()
            .filter(Row.Choice.class::isInstance)
            .map(Row.Choice.class::cast)
            .findFirst();
    return choice.orElseThrow().change().apply(kind.ordinal()).apply(desk);
  }

  private static Desk pressed(Desk desk, String id) {
    Deed deed =
        facts(desk).deeds().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    assertThat(deed.what()).isInstanceOf(Deed.OnDesk.class);
    return deed.what() instanceof Deed.OnDesk on ? on.change().apply(desk) : desk;
  }
}
