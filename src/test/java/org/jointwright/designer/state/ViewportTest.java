package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class ViewportTest {
  private static final Viewport PAPER = new Viewport(800, 600, new Point(100, 50), 2);

  @Test
  void toThePaperAndBackIsTheSamePoint() {
    Point p = new Point(37, -12);
    assertThat(PAPER.toPlan(PAPER.toPaper(p)).distance(p)).isLessThan(1e-9);
    assertThat(PAPER.toPaper(new Point(100, 50))).isEqualTo(new Point(400, 300));
  }

  @Test
  void upThePlanIsUpThePaper() {
    assertThat(PAPER.toPaper(new Point(100, 60)).y()).isEqualTo(280);
  }

  @Test
  void zoomingKeepsWhatIsUnderThePointer() {
    Point at = new Point(123, 456);
    Viewport zoomed = PAPER.zoomed(at, 3);
    assertThat(zoomed.scale()).isEqualTo(6);
    assertThat(zoomed.toPlan(at).distance(PAPER.toPlan(at))).isLessThan(1e-9);
  }

  @Test
  void zoomingHasEnds() {
    assertThat(PAPER.zoomed(new Point(0, 0), 1e9).scale()).isEqualTo(60);
    assertThat(PAPER.zoomed(new Point(0, 0), 1e-9).scale()).isEqualTo(0.01);
  }

  @Test
  void fittingShowsAllOfTheBox() {
    Box box = new Box(-500, 20, 900, 300);
    Viewport fitted = PAPER.fitted(box);
    assertThat(fitted.clear().holds(new Point(-500, 20))).isTrue();
    assertThat(fitted.clear().holds(new Point(900, 300))).isTrue();
  }

  @Test
  void pushingMovesThePaperWithTheHand() {
    Point p = new Point(10, 10);
    Point before = PAPER.toPaper(p);
    assertThat(PAPER.pushed(30, -20).toPaper(p)).isEqualTo(before.plus(new Point(30, -20)));
  }
}
