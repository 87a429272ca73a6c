package org.jointwright.designer.ready;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Use;
import org.jointwright.shape.Point;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UseGuessTest {
  @ParameterizedTest
  @CsvSource({
    "8, 16, CAR",
    "20, 30, CAR",
    "7.9, 16, FOOT",
    "4, 15, FOOT",
    "6, 8, FOOT",
    "5, 40, FOOT"
  })
  void whatTakesNoCarIsForPeople(double wide, double high, Use use) {
    List<Point> corners =
        List.of(
            new Point(0, 0),
            new Point(12 * wide, 0),
            new Point(12 * wide, 12 * high),
            new Point(0, 12 * high));
    assertThat(UseGuess.of(Outline.of(corners))).isEqualTo(use);
  }

  @Test
  void aNameMayTellMoreThanTheSize() {
    Words english = Words.english(UnitSystem.FEET_INCHES);
    assertThat(UseGuess.of("Back PATIO", english)).contains(Use.FOOT);
    assertThat(UseGuess.of("driveway", english)).contains(Use.CAR);
    assertThat(UseGuess.of("slab 2", english)).isEmpty();
    Words spanish = Words.of(Language.SPANISH, UnitSystem.FEET_INCHES);
    assertThat(UseGuess.of("banqueta norte", spanish)).contains(Use.FOOT);
  }
}
