package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Sketch;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class ConcreteTest {
  private static final Concrete CONCRETE =
      Evidence.of(
              Sketch.rectangle(200, 100)
                  .opening(20, 40, 60, 40, 60, 60, 20, 60)
                  .post(120, 50, 8)
                  .boxOut(100, 30, 140, 30, 140, 70, 100, 70))
          .concrete();

  @Test
  void itsEdgesAreThoseOfOutlineOpeningsAndCutouts() {
    assertThat(CONCRETE.edges()).hasSize(8);
    assertThat(CONCRETE.edgesAndCutouts()).hasSize(12);
  }

  @Test
  void itReachesToItsEdgesAndTheTolerance() {
    assertThat(CONCRETE.reaches(new Point(80, 50))).isTrue();
    assertThat(CONCRETE.reaches(new Point(80, -0.5))).isTrue();
    assertThat(CONCRETE.reaches(new Point(80, -0.6))).isFalse();
    assertThat(CONCRETE.reaches(new Point(40, 50))).isFalse();
    assertThat(CONCRETE.reaches(new Point(40, 40.5))).isTrue();
    assertThat(CONCRETE.reaches(new Point(120, 50))).isTrue();
  }

  @Test
  void deepInACutoutThereIsNone() {
    assertThat(CONCRETE.reachesOutsideCutouts(new Point(120, 50))).isFalse();
    assertThat(CONCRETE.reachesOutsideCutouts(new Point(100.5, 50))).isTrue();
    assertThat(CONCRETE.reachesOutsideCutouts(new Point(100.6, 50))).isFalse();
    assertThat(CONCRETE.reachesOutsideCutouts(new Point(80, 50))).isTrue();
    assertThat(CONCRETE.reachesOutsideCutouts(new Point(40, 50))).isFalse();
  }

  @Test
  void aPlaceIsCutOutInACutoutAndNearIt() {
    assertThat(CONCRETE.isCutOut(new Point(120, 50), 0.5)).isTrue();
    assertThat(CONCRETE.isCutOut(new Point(99.6, 50), 0.5)).isTrue();
    assertThat(CONCRETE.isCutOut(new Point(99.4, 50), 0.5)).isFalse();
  }
}
