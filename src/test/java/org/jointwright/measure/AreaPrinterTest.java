package org.jointwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AreaPrinterTest {
  @Test
  void areasArePrintedInBothMeasures() {
    assertThat(AreaPrinter.print(new Area(412 * 144), UnitSystem.FEET_INCHES)).isEqualTo("412 ft²");
    assertThat(AreaPrinter.print(new Area(41.24 * 144), UnitSystem.FEET_INCHES))
        .isEqualTo("41.2 ft²");
    assertThat(AreaPrinter.print(new Area(412 * 144), UnitSystem.METRIC)).isEqualTo("38.28 m²");
  }

  @Test
  void oneSquareMetreIsTheSquareOfItsSide() {
    double side = Length.of(1, LengthUnit.METRE).inches();
    assertThat(AreaPrinter.print(new Area(side * side), UnitSystem.METRIC)).isEqualTo("1.00 m²");
  }
}
