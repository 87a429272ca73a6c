package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.designer.sketch.Sentence;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

class DraftingTest {
  private static final Vocabulary ENGLISH = new Vocabulary(Words.english(UnitSystem.FEET_INCHES));

  private static Desk say(Desk desk, String... sentences) {
    Desk d = desk;
    for (String s : sentences) {
      d = Drafting.type(d, s);
      d = Drafting.enter(d, Sentence.read(s, ENGLISH, LengthUnit.FOOT), "slab");
    }
    return d;
  }

  private static Slab first(Desk desk) {
    return desk.plan().slabs().getFirst();
  }

  @Test
  void turnsToTheLeftGoRoundCounterClockwise() {
    Desk desk = say(Desk.blank(), "20'", "10' turn left", "20' turn left", "close");
    assertThat(first(desk).outline().ring().signedArea()).isEqualTo(200 * 144.0);
    assertThat(desk.picked()).isEqualTo(new Pick.WholeSlab("slab 1"));
    assertThat(desk.draft()).isEmpty();
  }

  @Test
  void turnsToTheRightMakeTheSameSlab() {
    Desk desk = say(Desk.blank(), "20' right", "10' turn right", "20' turn right", "close");
    assertThat(first(desk).outline().ring().signedArea()).isEqualTo(200 * 144.0);
  }

  @Test
  void aDriveWithAFlareIsTypedAsItWasTaped() {
    Desk desk =
        say(Desk.blank(), "20' right", "12' down", "6' down 4' right", "12' down", "24' left")
            .picking(Pick.NOTHING);
    assertThat(say(desk, "close").plan().slabs().getFirst().outline().ring().area())
        .isEqualTo((20 * 12 + 22 * 6 + 24 * 12) * 144.0);
  }

  @Test
  void aSideBackOverTheOneBeforeIsNotPlaced() {
    Desk desk = say(Desk.blank(), "20' right", "12' left");
    assertThat(desk.draft().orElseThrow().placed()).hasSize(2);
    assertThat(desk.draft().orElseThrow().typed()).isEqualTo("12' left");
  }

  @Test
  void halfAWordIsNotPlaced() {
    Desk desk = say(Desk.blank(), "20' right", "12' do", "6' o");
    assertThat(desk.draft().orElseThrow().placed()).hasSize(3);
    assertThat(desk.draft().orElseThrow().typed()).isEqualTo("6' o ");
  }

  @Test
  void anArcThatBulgesOutAddsToTheSlabWhicheverWayItIsDrawn() {
    double straight = 200 * 144.0;
    Desk left = say(Desk.blank(), "20'", "10' turn left", "20' turn left out 3'", "close");
    Desk right = say(Desk.blank(), "20' right", "10' turn right", "20' turn right out 3'", "close");
    assertThat(first(left).outline().ring().area()).isGreaterThan(straight);
    assertThat(first(right).outline().ring().area())
        .isCloseTo(first(left).outline().ring().area(), within(1e-6));
  }

  @Test
  void aSideTypedBackToTheFirstCornerCloses() {
    Desk desk = say(Desk.blank(), "20'", "10' turn left", "20' turn left", "10' turn left");
    assertThat(desk.plan().slabs()).hasSize(1);
  }

  @Test
  void anOutlineThatCrossesItselfIsNotClosed() {
    Desk desk = say(Desk.blank(), "20'", "10' turn left", "5' left 135", "30' left 45", "close");
    assertThat(desk.plan().slabs()).isEmpty();
    assertThat(desk.draft()).isPresent();
    assertThat(desk.notice()).isPresent();
  }

  @Test
  void aSideLongerThanAnySlabIsNotPlaced() {
    Desk desk = say(Desk.blank(), "20'", "9999999' turn left");
    assertThat(desk.draft().orElseThrow().placed()).hasSize(2);
    assertThat(desk.notice().orElseThrow().key()).isEqualTo("window.notice.tooLarge");
  }

  @Test
  void anOutlineLargerThanAnySlabIsNotClosed() {
    Desk desk = say(Desk.blank(), "2000'", "2000' turn left", "2000' turn left", "close");
    assertThat(desk.plan().slabs()).isEmpty();
    assertThat(desk.draft()).isPresent();
    assertThat(desk.notice().orElseThrow().key()).isEqualTo("window.notice.tooLarge");
  }

  @Test
  void twoCornersDoNotClose() {
    Desk desk = say(Desk.blank(), "20'", "close");
    assertThat(desk.plan().slabs()).isEmpty();
    assertThat(desk.draft().orElseThrow().placed()).hasSize(2);
  }

  @Test
  void aSecondSlabGetsAnotherNameAndStandsClear() {
    Desk desk = say(Desk.blank(), "20'", "10' turn left", "20' turn left", "close");
    Desk two = say(Drafting.begin(desk), "8'", "4' turn left", "8' turn left", "close");
    assertThat(two.plan().slabs()).extracting(Slab::id).containsExactly("slab 1", "slab 2");
    assertThat(two.plan().slabs().get(1).outline().ring().box().minX()).isGreaterThan(240);
  }

  @Test
  void aClickAtTheFirstCornerCloses() {
    Desk desk = Drafting.begin(Desk.blank());
    for (Point p :
        new Point[] {
          new Point(0, 0),
          new Point(240, 0),
          new Point(240, 120),
          new Point(2, 121),
          new Point(3, 2)
        }) {
      Point paper = desk.viewport().toPaper(p);
      desk = Drafting.click(desk, Pointer.on(desk.viewport(), paper.x(), paper.y(), false), "slab");
    }
    assertThat(first(desk).outline().ring().area()).isEqualTo(240 * 120.0);
  }

  @Test
  void withAltNothingDrawsThePencil() {
    Desk desk = Drafting.begin(Desk.blank());
    Point paper = desk.viewport().toPaper(new Point(10.3, 7.7));
    Pointer free = Pointer.on(desk.viewport(), paper.x(), paper.y(), true);
    Pencil pencil = Drafting.pencil(desk, Draft.EMPTY, free);
    assertThat(pencil.guides()).isEmpty();
    assertThat(pencil.at().distance(new Point(10.3, 7.7))).isLessThan(1e-9);
  }

  @Test
  void undoTakesBackTheLastSideWhileASlabIsDrawnAndNothingOfThePlan() {
    Desk closed = say(Desk.blank(), "20'", "10' turn left", "20' turn left", "close");
    Desk drawing = say(Drafting.begin(closed), "8'", "4' turn left", "8' turn left");
    Desk typed = Drafting.type(drawing, "5");
    Desk once = typed.undone();
    assertThat(once.draft().orElseThrow().placed()).hasSize(3);
    assertThat(once.draft().orElseThrow().typed()).isEmpty();
    assertThat(once.redone()).as("no step of the plan comes in between").isSameAs(once);
    Desk none = once.undone().undone().undone();
    assertThat(none.draft().orElseThrow().placed()).isEmpty();
    assertThat(none.plan()).isEqualTo(closed.plan());
    assertThat(none.undone().plan()).isEqualTo(Plan.EMPTY);
  }
}
