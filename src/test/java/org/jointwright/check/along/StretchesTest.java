package org.jointwright.check.along;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class StretchesTest {
  private static final Edge LINE = new Segment(new Point(0, 0), new Point(100, 0));

  @Test
  void aShortStretchIsFoundWithItsEnds() {
    List<Stretch> found = Stretches.of(LINE, p -> p.x() > 50.3 && p.x() < 51.1);
    assertThat(found).hasSize(1);
    assertThat(found.getFirst().from()).isCloseTo(0.503, within(1e-5));
    assertThat(found.getFirst().to()).isCloseTo(0.511, within(1e-5));
    assertThat(found.getFirst().length()).isCloseTo(0.8, within(1e-3));
    assertThat(found.getFirst().middle().x()).isCloseTo(50.7, within(1e-3));
  }

  @Test
  void aStretchReachesTheEndsOfItsLine() {
    assertThat(Stretches.of(LINE, p -> true)).containsExactly(new Stretch(LINE, 0, 1));
    assertThat(Stretches.of(LINE, p -> false)).isEmpty();
    assertThat(Stretches.of(LINE, p -> p.x() < 0.1)).extracting(Stretch::from).containsExactly(0.0);
    assertThat(Stretches.of(LINE, p -> p.x() > 99.9)).extracting(Stretch::to).containsExactly(1.0);
  }

  @Test
  void twoStretchesAreTwoAndAddUp() {
    List<Stretch> found = Stretches.of(LINE, p -> p.x() < 10 || p.x() > 80);
    assertThat(found).hasSize(2);
    assertThat(Stretches.length(found)).isCloseTo(30, within(1e-3));
    Path there = new Path(List.of(LINE, LINE.reversed()));
    assertThat(Stretches.of(there, p -> p.x() > 80)).hasSize(2);
  }

  @Test
  void aShortLineIsWalkedInFourStepsAtLeast() {
    Edge inch = new Segment(new Point(0, 0), new Point(0.4, 0));
    assertThat(Stretches.length(Stretches.of(inch, p -> p.x() > 0.15 && p.x() < 0.25)))
        .isCloseTo(0.1, within(1e-3));
  }
}
