package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Said;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class SetDownTest {
  private static Pointer at(Desk desk, double x, double y) {
    Point paper = desk.viewport().toPaper(new Point(x, y));
    return Pointer.on(desk.viewport(), paper.x(), paper.y(), false);
  }

  private static Slab only(Desk desk) {
    assertThat(desk.plan().slabs()).hasSize(1);
    return desk.plan().slabs().getFirst();
  }

  @Test
  void aShapeIsSizedThenSetDownAsOneStep() {
    Desk sized =
        SetDown.changed(
            SetDown.begin(Desk.blank()),
            new ReadyShape(ReadyKind.RECTANGLE, List.of(120.0, 96.0), 0, false));
    assertThat(sized.plan().slabs()).as("not on the plan yet").isEmpty();
    Desk placed = SetDown.place(SetDown.push(sized, new Point(12, 0)), "slab");
    assertThat(only(placed).outline().ring().vertices())
        .containsExactly(
            new Point(12, 0), new Point(132, 0), new Point(132, 96), new Point(12, 96));
    assertThat(placed.picked()).isEqualTo(new Pick.WholeSlab("slab 1"));
    assertThat(placed.hand()).isEqualTo(InHand.EMPTY);
    assertThat(placed.undone().plan()).isEqualTo(Plan.EMPTY);
  }

  @Test
  void itsFirstCornerIsDrawnToACornerOfTheDrawing() {
    Slab drive =
        Slab.of(
            "drive",
            Outline.of(
                List.of(
                    new Point(0, 0), new Point(240, 0), new Point(240, 360), new Point(0, 360))));
    Desk desk = SetDown.begin(Desk.begun(Plan.EMPTY.withSlabs(List.of(drive))));
    Desk led = SetDown.lead(desk, at(desk, 243, 2));
    assertThat(led.hand().shape().orElseThrow().pencil().at()).isEqualTo(new Point(240, 0));
    assertThat(led.hand().shape().orElseThrow().pencil().guides())
        .extracting(Guide::kind)
        .containsExactly(Guide.Kind.CORNER);
    Pointer free = new Pointer(at(desk, 243, 2).paper(), new Point(243, 2), true);
    assertThat(SetDown.lead(desk, free).hand().shape().orElseThrow().pencil().at())
        .as("with the help held off")
        .isEqualTo(new Point(243, 2));
  }

  @Test
  void aShapeTooSmallForASlabIsToldAndStaysInTheHand() {
    Desk tiny =
        SetDown.changed(
            SetDown.begin(Desk.blank()),
            new ReadyShape(ReadyKind.RECTANGLE, List.of(120.0, 1.0), 0, false));
    Desk told = SetDown.place(tiny, "slab");
    assertThat(told.plan().slabs()).isEmpty();
    assertThat(told.notice().orElseThrow().key()).isEqualTo("window.notice.noShape");
    assertThat(told.hand().shape()).isPresent();
  }

  @Test
  void walksAreForPeopleAndDrivesForCars() {
    Desk walk =
        SetDown.changed(SetDown.begin(Desk.blank()), ReadyShape.usual(ReadyKind.WALK, false));
    assertThat(only(SetDown.place(walk, "slab")).use()).isEqualTo(Use.FOOT);
    Desk drive =
        SetDown.changed(SetDown.begin(Desk.blank()), ReadyShape.usual(ReadyKind.DRIVE, true));
    assertThat(only(SetDown.place(drive, "slab")).use()).isEqualTo(Use.CAR);
  }

  private static Desk strip(double... xy) {
    Desk desk = Drafting.begin(Desk.blank(), Drawn.STRIP);
    for (int i = 0; i < xy.length; i += 2) {
      desk = Drafting.click(desk, at(desk, xy[i], xy[i + 1]), "slab");
    }
    return desk;
  }

  @Test
  void aWalkIsDrawnAlongItsMiddleAndEndedByEnter() {
    Desk drawn = strip(0, 24, 120, 24, 120, 144);
    assertThat(drawn.plan().slabs()).isEmpty();
    Desk walk = Drafting.enter(drawn, new Said.Silent(), "slab");
    assertThat(only(walk).outline().ring().area()).isEqualTo(48 * 240);
    assertThat(only(walk).use()).isEqualTo(Use.FOOT);
  }

  @Test
  void aSecondClickOnTheLastCornerEndsIt() {
    Desk drawn = strip(0, 24, 120, 24);
    Desk wide = drawn.withHand(InHand.drawing(drawn.draft().orElseThrow().withWide(120)));
    Desk drive = Drafting.click(wide, at(wide, 120, 24), "slab");
    assertThat(only(drive).outline().ring().area()).isEqualTo(120 * 120);
    assertThat(only(drive).use()).isEqualTo(Use.CAR);
  }

  @Test
  void aStripTooWideForItsBendsIsToldAndStaysInTheHand() {
    Desk drawn = strip(0, 24, 120, 24, 120, 36, 240, 36);
    Desk told = Drafting.enter(drawn, new Said.Silent(), "slab");
    assertThat(told.plan().slabs()).isEmpty();
    assertThat(told.notice().orElseThrow().key()).isEqualTo("window.notice.folds");
    assertThat(told.draft()).isPresent();
  }
}
