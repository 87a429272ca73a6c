package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The SVG as a browser shows it and the PDF as a PDF renderer paints it are one picture: at 150
 * dots an inch no dark dot of either is farther than two dots from ink of the other. Needs Chromium
 * and the typeface Lato on the machine; {@code mvn -Psheets} compares them for every plan.
 */
class TwoRenderersTest {
  private static final long SEED = 20_261_127;
  private static final int SELECTED = 4;

  @TempDir private Path folder;

  private static List<MadeSheet> sheets() {
    String drive = "multi_drive_approach_walk";
    List<MadeSheet> all = new ArrayList<>();
    LaidPlans.names().forEach(n -> all.addAll(MadeSheet.usual(n)));
    Collections.shuffle(all, new Random(SEED));
    List<MadeSheet> some = new ArrayList<>(all.subList(0, SELECTED));
    some.add(
        new MadeSheet(drive, Kind.OWNER, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER));
    some.add(new MadeSheet(drive, Kind.CUT, Language.SPANISH, UnitSystem.METRIC, Paper.A4));
    return some;
  }

  @Test
  void bothAreOnePicture() throws Exception {
    TwoRenderers both = new TwoRenderers(folder);
    Optional<String> missing = both.missing();
    if (missing.isPresent()) {
      abort(missing.get());
    }
    for (MadeSheet sheet : sheets()) {
      List<Page> pages = sheet.pages();
      List<List<String>> differences = both.differences(pages);
      for (int i = 0; i < pages.size(); i++) {
        assertThat(differences.get(i)).as("%s, page %d", sheet, i + 1).isEmpty();
      }
    }
  }
}
