package org.jointwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VolumeTest {
  @ParameterizedTest
  @CsvSource({
    "9 yd3, 9",
    "9 cu yd, 9",
    "9 cu. yd., 9",
    "9yd³, 9",
    "9 CY, 9",
    "9 yards, 9",
    "9 cubic yards, 9",
    ".5 yd, 0.5",
    "9.25, 9.25",
    "54 cu ft, 2",
    "27 ft3, 1"
  })
  void yardsAreReadAsTheyAreWritten(String text, double yards) {
    assertThat(
            VolumeReader.read(text, VolumeUnit.CUBIC_YARD).orElseThrow().in(VolumeUnit.CUBIC_YARD))
        .isEqualTo(yards);
  }

  @ParameterizedTest
  @CsvSource({"7 m3, 7", "7 m³, 7", "6.88 cubic metres, 6.88", "7 cu m, 7", "7, 7"})
  void metresAreReadAsTheyAreWritten(String text, double metres) {
    assertThat(
            VolumeReader.read(text, VolumeUnit.CUBIC_METRE)
                .orElseThrow()
                .in(VolumeUnit.CUBIC_METRE))
        .isEqualTo(metres);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "yd3",
        "9 ft",
        "9 m",
        "9 sq yd",
        "-9 yd3",
        "9,5 yd3",
        "9 yd3 more",
        "1e3 yd3",
        "9 cu"
      })
  void whatIsNoVolumeIsNone(String text) {
    assertThat(VolumeReader.read(text, VolumeUnit.CUBIC_YARD)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "9, 9 yd³, 6.88 m³",
    "8.64, 8.64 yd³, 6.61 m³",
    "8.645, 8.65 yd³, 6.61 m³",
    "0.5, 0.5 yd³, 0.38 m³",
    "100, 100 yd³, 76.46 m³",
    "0, 0 yd³, 0 m³"
  })
  void volumesArePrintedInBothSystems(double yards, String feet, String metric) {
    Volume volume = Volume.cubicYards(yards);
    assertThat(VolumePrinter.print(volume, UnitSystem.FEET_INCHES)).isEqualTo(feet);
    assertThat(VolumePrinter.print(volume, UnitSystem.METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource({"81, 4, 1", "324, 4, 4", "324, 6, 6"})
  void aSlabHoldsItsAreaTimesItsThickness(double squareFeet, double inches, double yards) {
    Volume volume = Volume.under(new Area(squareFeet * 144), Length.inches(inches));
    assertThat(volume).isEqualTo(Volume.cubicYards(yards));
  }
}
