package org.jointwright.designer.ready;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.junit.jupiter.api.Test;

class ReadyShapeTest {
  private static final Point ORIGIN = new Point(0, 0);

  private static ReadyShape shape(ReadyKind kind, Double... sizes) {
    return new ReadyShape(kind, List.of(sizes), 0, false);
  }

  private static Ring ring(ReadyShape shape) {
    return shape.at(ORIGIN).map(Outline::ring).orElseThrow();
  }

  @Test
  void everyShapeAtItsUsualSizesRunsCounterClockwiseAndIsLarge() {
    for (ReadyKind kind : ReadyKind.values()) {
      for (boolean isMetric : new boolean[] {false, true}) {
        Ring ring = ring(ReadyShape.usual(kind, isMetric));
        assertThat(ring.signedArea()).as(kind.word()).isGreaterThan(144 * 20);
        double mirrored = ring(ReadyShape.usual(kind, isMetric).withMirrored(true)).signedArea();
        assertThat(mirrored).as(kind.word()).isCloseTo(ring.signedArea(), within(1e-6));
      }
    }
  }

  @Test
  void areasAreThoseOfTheBook() {
    assertThat(ring(shape(ReadyKind.RECTANGLE, 240.0, 360.0)).signedArea()).isEqualTo(86400);
    assertThat(ring(shape(ReadyKind.ELL, 360.0, 144.0, 300.0, 120.0)).signedArea())
        .isEqualTo(360 * 144 + 120 * (300 - 144));
    assertThat(ring(shape(ReadyKind.FLARED, 144.0, 96.0, 36.0)).signedArea())
        .isEqualTo(96 * (144 + 36));
    assertThat(ring(shape(ReadyKind.CIRCLE, 144.0)).signedArea())
        .isCloseTo(Math.PI * 72 * 72, within(1e-6));
    assertThat(ring(shape(ReadyKind.SECTOR, 144.0, 90.0, 48.0)).signedArea())
        .isCloseTo(Math.PI / 4 * (144 * 144 - 48 * 48), within(1e-6));
    assertThat(ring(shape(ReadyKind.SECTOR, 144.0, 300.0, 0.0)).signedArea())
        .isCloseTo(Math.PI * 300 / 360 * 144 * 144, within(1e-6));
  }

  @Test
  void aDriveIsAsLargeAsItsMiddleLineIsLongTimesItsWidth() {
    double middle = 240 + 300 * Math.toRadians(60) + 120;
    Ring ring = ring(shape(ReadyKind.DRIVE, 144.0, 240.0, 300.0, 60.0, 120.0));
    assertThat(ring.signedArea()).isCloseTo(144 * middle, within(1e-6));
    assertThat(ring.edges().stream().filter(Arc.class::isInstance)).hasSize(2);
    assertThat(ring.edges().getFirst().start()).isEqualTo(new Point(144, 0));
    assertThat(ring.edges().getLast().start()).isEqualTo(ORIGIN);
  }

  @Test
  void aWalkRoundASquareBendKeepsItsWidth() {
    Ring ring = ring(shape(ReadyKind.WALK, 36.0, 180.0, 90.0, 96.0));
    assertThat(ring.edges()).hasSize(6);
    assertThat(ring.signedArea()).isCloseTo(36 * (180 + 96), within(1e-6));
    Ring straight = ring(shape(ReadyKind.WALK, 36.0, 180.0, 0.0, 96.0));
    assertThat(straight.edges()).hasSize(4);
  }

  @Test
  void turningAndMovingKeepsTheShapeAndQuarterTurnsAreExact() {
    ReadyShape shape = shape(ReadyKind.RECTANGLE, 240.0, 120.0).withTurned(90);
    assertThat(shape.at(new Point(300, 12)).orElseThrow())
        .isEqualTo(
            Outline.of(
                List.of(
                    new Point(300, 12),
                    new Point(300, 252),
                    new Point(180, 252),
                    new Point(180, 12))));
    assertThat(shape.withTurned(-90).turned()).isEqualTo(270);
    Random random = new Random(7);
    for (int i = 0; i < 40; i++) {
      ReadyKind kind = ReadyKind.values()[random.nextInt(ReadyKind.values().length)];
      ReadyShape usual = ReadyShape.usual(kind, false);
      double degrees = random.nextDouble() * 360;
      Ring turned = usual.withTurned(degrees).at(new Point(i, -i)).map(Outline::ring).orElseThrow();
      assertThat(turned.signedArea())
          .as("seed 7, %s by %s", kind, degrees)
          .isCloseTo(ring(usual).signedArea(), within(1e-6));
      assertThat(turned.perimeter()).isCloseTo(ring(usual).perimeter(), within(1e-6));
    }
  }

  @Test
  void sizesThatDoNotGoTogetherMakeNothing() {
    assertThat(shape(ReadyKind.ELL, 240.0, 120.0, 120.0, 60.0).at(ORIGIN)).isEmpty();
    assertThat(shape(ReadyKind.ELL, 240.0, 119.0, 120.0, 60.0).at(ORIGIN)).isPresent();
    assertThat(shape(ReadyKind.SECTOR, 120.0, 90.0, 120.0).at(ORIGIN)).isEmpty();
    assertThat(shape(ReadyKind.DRIVE, 144.0, 0.0, 72.0, 60.0, 0.0).at(ORIGIN)).isEmpty();
    assertThat(shape(ReadyKind.DRIVE, 144.0, 0.0, 73.0, 60.0, 0.0).at(ORIGIN)).isPresent();
  }

  @Test
  void sizesOutOfBoundsAreRefused() {
    assertThatThrownBy(() -> shape(ReadyKind.CIRCLE, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> shape(ReadyKind.CIRCLE)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> shape(ReadyKind.SECTOR, 144.0, 356.0, 0.0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> shape(ReadyKind.RECTANGLE, 240.0, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
