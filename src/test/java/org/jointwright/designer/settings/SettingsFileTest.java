package org.jointwright.designer.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsFileTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("own").resolve("settings.properties");
  }

  @Test
  void whatWasChosenIsThereAtTheNextStart() {
    for (Language language : Language.values()) {
      for (Measures measures : Measures.values()) {
        for (Look look : Look.values()) {
          for (TextSize text : TextSize.values()) {
            Settings chosen = new Settings(language, measures, look, text);
            new SettingsFile(file()).write(chosen);
            assertThat(new SettingsFile(file()).read()).isEqualTo(chosen);
          }
        }
      }
    }
    assertThat(folder.resolve("own")).isDirectoryContaining(f -> f.equals(file()));
  }

  @Test
  void nothingIsChosenBeforeTheFirstStart() {
    assertThat(new SettingsFile(file()).read()).isEqualTo(Settings.FIRST);
    assertThat(file()).doesNotExist();
  }

  @Test
  void wordsThatNobodyKnowsCountAsNotSaid() throws IOException {
    Files.createDirectories(file().getParent());
    Files.writeString(file(), "language=fr\nlook=dark\ntext=\nmeasures=cubits\nelse=1\n");
    assertThat(new SettingsFile(file()).read()).isEqualTo(Settings.FIRST.with(Look.DARK));
    Files.writeString(file(), "look=\\u00zz");
    assertThat(new SettingsFile(file()).read()).isEqualTo(Settings.FIRST);
    Files.write(file(), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
    assertThat(new SettingsFile(file()).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void aPlaceThatCannotBeWrittenCostsTheMemoryOnly() throws IOException {
    Files.writeString(folder.resolve("own"), "a file where the folder should be");
    new SettingsFile(file()).write(Settings.FIRST.with(Look.DARK));
    assertThat(new SettingsFile(file()).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void aBareNumberIsInThePlansUnitWhereThatIsOfTheMeasuresShown() {
    assertThat(Measures.PLAN.bare(LengthUnit.MILLIMETRE)).isEqualTo(LengthUnit.MILLIMETRE);
    assertThat(Measures.METRIC.bare(LengthUnit.MILLIMETRE)).isEqualTo(LengthUnit.MILLIMETRE);
    assertThat(Measures.METRIC.bare(LengthUnit.FOOT)).isEqualTo(LengthUnit.METRE);
    assertThat(Measures.FEET_INCHES.bare(LengthUnit.METRE)).isEqualTo(LengthUnit.FOOT);
    assertThat(Measures.FEET_INCHES.bare(LengthUnit.INCH)).isEqualTo(LengthUnit.INCH);
    assertThat(Measures.METRIC.of(LengthUnit.INCH)).isEqualTo(UnitSystem.METRIC);
  }

  @Test
  void theWindowFollowsTheSystemUnlessToldOtherwise() {
    assertThat(Look.SYSTEM.isDark(true)).isTrue();
    assertThat(Look.SYSTEM.isDark(false)).isFalse();
    assertThat(Look.LIGHT.isDark(true)).isFalse();
    assertThat(Look.DARK.isDark(false)).isTrue();
    assertThat(TextSize.SYSTEM.times(1.25)).isEqualTo(1.25);
    assertThat(TextSize.SYSTEM.times(0.8)).isEqualTo(1);
    assertThat(TextSize.SYSTEM.times(9)).isEqualTo(2);
    assertThat(TextSize.LARGEST.times(1.25)).isEqualTo(1.5);
  }
}
