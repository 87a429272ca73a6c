package org.jointwright.house;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.Answer;
import org.jointwright.app.PlanFiles;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.start.Portrait;
import org.jointwright.file.PlanReading;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Language;
import org.jointwright.text.Words;

/**
 * Makes the pictures of the README by the program itself: {@code mvn -q -Ppictures}. Told a plan,
 * it makes a picture of the window on it in {@code target} instead.
 */
final class Pictures {
  private static final Path SAMPLE = Path.of("samples/drive-approach-walk.jointwright.json");
  private static final Path FOLDER = Path.of("src/docs/pictures");
  private static final Portrait.Size SIZE = new Portrait.Size(1280, 800);

  private Pictures() {}

  public static void main(String[] args) throws Exception {
    if (args.length > 0) {
      Path png = Path.of("target", Sheets.stem(Optional.of(Path.of(args[0]))) + "-window.png");
      Files.deleteIfExists(png);
      Portrait.write(
          Path.of(args[0]),
          List.of(new Portrait.Sitting(SIZE, Settings.FIRST.with(Look.LIGHT), png)));
      return;
    }
    Files.createDirectories(FOLDER);
    cutSheet(FOLDER.resolve("cut-sheet.png"));
    Settings light = Settings.FIRST.with(Look.LIGHT);
    Settings dark = Settings.FIRST.with(Look.DARK);
    Portrait.write(
        SAMPLE,
        List.of(
            sitting("window", light),
            sitting("window-dark", dark),
            sitting("window-es", light.with(Language.SPANISH).with(Measures.METRIC))));
  }

  private static Portrait.Sitting sitting(String name, Settings settings) throws IOException {
    Path png = FOLDER.resolve(name + ".png");
    // Saving keeps what was there before; the repository does so already.
    Files.deleteIfExists(png);
    return new Portrait.Sitting(SIZE, settings, png);
  }

  private static void cutSheet(Path png) throws Exception {
    if (!(PlanFiles.open(SAMPLE) instanceof PlanReading.ReadPlan read)) {
      throw new IOException(SAMPLE + " is refused");
    }
    Path folder = Files.createTempDirectory("pictures");
    for (Path file :
        Sheets.write(
            Answer.laid(read.plan()),
            Sheets.Wanted.of(SheetKind.CREW, Words.english(UnitSystem.FEET_INCHES)),
            folder,
            "sheet",
            () -> true)) {
      if (file.toString().endsWith(".png")) {
        Files.copy(file, png, StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }
}
