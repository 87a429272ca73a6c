package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets are known again by the plan that they carry, and by having been left alone. */
class OwnSheetsTest {
  private static final Plan PAD =
      Answer.laid(
              Plan.EMPTY.withSlabs(
                  List.of(
                      Slab.of(
                          "pad",
                          Outline.of(
                              List.of(
                                  new Point(0, 0),
                                  new Point(120, 0),
                                  new Point(120, 120),
                                  new Point(0, 120)))))))
          .plan();

  private static final Instant WRITTEN = Instant.parse("2026-05-04T10:00:00Z");

  @TempDir private Path folder;
  private List<Path> files = List.of();

  @BeforeEach
  void write() throws Exception {
    Sheets.Wanted wanted =
        new Sheets.Wanted(
            List.of(SheetKind.CREW, SheetKind.PLANT),
            Words.english(UnitSystem.FEET_INCHES),
            "letter");
    files = Sheets.write(Answer.asItStands(PAD), wanted, folder, "pad", () -> true);
    for (Path file : files) {
      touch(file, Duration.ZERO);
    }
    assertThat(files).hasSize(5);
  }

  private static void touch(Path file, Duration after) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(WRITTEN.plus(after)));
  }

  private Path file(String name) {
    return folder.resolve(name);
  }

  private List<Path> without(String... names) {
    List<Path> rest = new ArrayList<>(files);
    Stream.of(names).map(this::file).forEach(rest::remove);
    return rest;
  }

  @Test
  void allThatWasWrittenOfThePlanIsItsOwn() {
    assertThat(OwnSheets.among(files, List.of(PAD))).containsExactlyInAnyOrderElementsOf(files);
  }

  @Test
  void whatWasWrittenOfThePlanBeforeIsToo() {
    Plan thicker = new SlabEdit.SetThickness("pad", Length.inches(6)).applyTo(PAD);
    assertThat(OwnSheets.among(files, List.of(thicker, PAD)))
        .containsExactlyInAnyOrderElementsOf(files);
    assertThat(OwnSheets.among(files, List.of(thicker))).as("of another plan").isEmpty();
  }

  @Test
  void aPdfThatWasMarkedUpSinceIsNotAndNothingIsKnownByIt() throws IOException {
    touch(file("pad-sheets.pdf"), Duration.ofSeconds(59));
    assertThat(OwnSheets.among(files, List.of(PAD))).as("in one go").hasSize(5);
    touch(file("pad-sheets.pdf"), Duration.ofSeconds(61));
    assertThat(OwnSheets.among(files, List.of(PAD))).isEmpty();
  }

  @Test
  void aDrawingThatWasTouchedSinceIsNotNorIsItsPicture() throws IOException {
    touch(file("pad-cut-sheet.svg"), Duration.ofHours(1));
    assertThat(OwnSheets.among(files, List.of(PAD)))
        .containsExactlyInAnyOrderElementsOf(without("pad-cut-sheet.svg", "pad-cut-sheet.png"));
  }

  @Test
  void whatCarriesNoPlanIsAnothers() throws IOException {
    Files.writeString(file("pad-sheets.pdf"), "agreed");
    touch(file("pad-sheets.pdf"), Duration.ZERO);
    assertThat(OwnSheets.among(files, List.of(PAD))).isEmpty();
    assertThat(OwnSheets.among(List.of(file("nowhere.pdf")), List.of(PAD))).isEmpty();
  }

  @Test
  void aDrawingWhosePlanWasChangedIsAnothers() throws IOException {
    Path drawing = file("pad-cut-sheet.svg");
    String text = Files.readString(drawing);
    assertThat(text).contains("\"pad\"");
    Files.writeString(drawing, text.replace("\"pad\"", "\"apron\""));
    touch(drawing, Duration.ZERO);
    assertThat(OwnSheets.among(files, List.of(PAD)))
        .doesNotContain(drawing, file("pad-cut-sheet.png"))
        .contains(file("pad-order-sheet.svg"));
  }
}
