package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Step;
import org.jointwright.measure.Length;
import org.jointwright.plan.edit.SlabEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Plans opened and kept, and sheets written, from the real window. */
@ExtendWith(NeedsWindow.class)
class FilesInTheWindowTest {
  private static final Path SAMPLE =
      Path.of("samples/drive-approach-walk.jointwright.json").toAbsolutePath();

  @TempDir private Path folder;
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig();
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private void openSample() {
    rig.nextPlace(SAMPLE);
    rig.key(KeyCode.CONTROL, KeyCode.O);
    rig.until(() -> !rig.designer().board().desk().plan().slabs().isEmpty()).laid();
  }

  private void drawASlab() {
    rig.type("20'").key(KeyCode.ENTER);
    rig.type("12' turn left").key(KeyCode.ENTER);
    rig.type("20' turn left").key(KeyCode.ENTER);
    rig.type("close").key(KeyCode.ENTER).laid();
  }

  @Test
  void aPlanIsOpenedLaidAndShown() {
    openSample();
    assertThat(rig.desk().sight().step()).isEqualTo(Step.JOINTS);
    assertThat(rig.plan().isLaid()).isTrue();
    assertThat(rig.title()).doesNotContain("not saved");
    assertThat(rig.text("kept")).isEqualTo("joints not in the file yet");
  }

  @Test
  void aPlanIsKeptAndOpenedAgainAsItWas() {
    drawASlab();
    assertThat(rig.title()).contains("not saved");
    Path file = folder.resolve("mine.jointwright.json");
    rig.nextPlace(file);
    rig.key(KeyCode.CONTROL, KeyCode.S).until(() -> Files.exists(file));
    rig.until(() -> rig.designer().board().desk().papers().isKept());
    assertThat(rig.title()).doesNotContain("not saved");
    assertThat(rig.text("kept")).startsWith("Saved ");
    var slabs = rig.plan().slabs();
    rig.key(KeyCode.CONTROL, KeyCode.N);
    assertThat(rig.plan().slabs()).isEmpty();
    rig.nextPlace(file);
    rig.key(KeyCode.CONTROL, KeyCode.O)
        .until(() -> !rig.designer().board().desk().plan().slabs().isEmpty());
    assertThat(rig.plan().slabs().getFirst().outline()).isEqualTo(slabs.getFirst().outline());
    assertThat(rig.plan().slabs().getFirst().joints()).hasSameSizeAs(slabs.getFirst().joints());
  }

  @Test
  void undoingPastWhatWasSavedShowsNotSaved() {
    openSample();
    rig.nextPlace(folder.resolve("a.jointwright.json"));
    rig.key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.S);
    rig.until(() -> Files.exists(folder.resolve("a.jointwright.json")));
    rig.clickOn("step-section").fill("slab-thickness", "6").laid();
    assertThat(rig.text("kept")).isEqualTo("not saved");
    rig.key(KeyCode.CONTROL, KeyCode.S);
    rig.until(() -> rig.designer().board().desk().papers().isKept());
    rig.clickOn("undo").laid();
    assertThat(rig.text("kept")).isEqualTo("not saved");
  }

  @Test
  void aFileThatIsRefusedSaysWhereAndWhatToDo() throws IOException {
    Path bad = folder.resolve("bad.json");
    Files.writeString(
        bad, "{\"format\":\"jointwright-plan\",\"version\":1,\"slabs\":[{\"id\":7}]}");
    rig.nextPlace(bad);
    rig.key(KeyCode.CONTROL, KeyCode.O)
        .until(() -> rig.designer().board().desk().notice().isPresent());
    Notice notice = rig.desk().notice().orElseThrow();
    assertThat(notice.isTrouble()).isTrue();
    assertThat(notice.lines()).anyMatch(l -> l.contains("slabs[0]"));
    assertThat(rig.plan().slabs()).isEmpty();
    rig.clickOn("notice-putAway");
    assertThat(rig.desk().notice()).isEmpty();
  }

  @Test
  void workThatIsNotKeptIsNotLostByANewPlan() {
    drawASlab();
    rig.key(KeyCode.CONTROL, KeyCode.N);
    assertThat(rig.plan().slabs()).as("asked first").hasSize(1);
    rig.clickOn("notice-stay");
    assertThat(rig.plan().slabs()).hasSize(1);
    rig.key(KeyCode.CONTROL, KeyCode.N);
    rig.clickOn("notice-leave");
    assertThat(rig.plan().slabs()).isEmpty();
  }

  @Test
  void aPlaceThatCannotBeWrittenLeavesThePlanNotSavedAndSaysSo() {
    drawASlab();
    rig.nextPlace(folder.resolve("no-such-folder").resolve("mine.jointwright.json"));
    rig.key(KeyCode.CONTROL, KeyCode.S)
        .until(() -> rig.designer().board().desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().isTrouble()).isTrue();
    assertThat(rig.title()).contains("not saved");
  }

  @Test
  void theSheetsAreWrittenIntoTheFolder() throws IOException {
    openSample();
    rig.nextPlace(folder);
    rig.clickOn("step-sheets").clickOn("deed-write-sheets");
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().isTrouble()).isFalse();
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names = files.map(f -> f.getFileName().toString()).toList();
      assertThat(names).anyMatch(n -> n.endsWith(".svg")).anyMatch(n -> n.endsWith(".pdf"));
    }
  }

  @Test
  void sheetsOfAnotherDayAreWrittenOverOnlyWhereThatIsSaid() throws IOException {
    openSample();
    rig.nextPlace(folder);
    rig.clickOn("step-sheets").clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    Path pdf;
    try (Stream<Path> files = Files.list(folder)) {
      pdf = files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
    rig.clickOn("notice-putAway");
    Path mine = folder.resolve("mine");
    Files.createDirectories(mine);
    Path agreed = mine.resolve(pdf.getFileName());
    Files.writeString(agreed, "agreed");
    Files.writeString(mine.resolve("notes.pdf"), "of no sheet");
    String stem = String.valueOf(pdf.getFileName()).replace("sheets.pdf", "");
    rig.nextPlace(mine);
    rig.clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().lines())
        .containsExactly(String.valueOf(pdf.getFileName()));
    rig.clickOn("notice-stay");
    assertThat(agreed).hasContent("agreed");
    rig.nextPlace(mine);
    rig.clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    rig.clickOn("notice-over");
    rig.until(() -> rig.desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().lines()).hasSizeGreaterThan(1);
    assertThat(mine.resolve(pdf.getFileName() + "~")).hasContent("agreed");
    rig.clickOn("notice-putAway");
    rig.nextPlace(mine);
    rig.clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().next())
        .as("its own are not asked about")
        .isEmpty();
    rig.clickOn("notice-putAway");
    String slab = rig.plan().slabs().getFirst().id();
    SlabEdit thicker = new SlabEdit.SetThickness(slab, Length.inches(7));
    rig.act(() -> rig.designer().board().change(d -> d.edited(thicker)));
    rig.laid().nextPlace(mine);
    rig.clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    assertThat(mine.resolve(pdf.getFileName() + "~")).as("still").hasContent("agreed");
    rig.clickOn("notice-putAway");
    Files.writeString(mine.resolve(stem + "cut-sheet-9.png"), "a page that is no more");
    rig.nextPlace(SAMPLE);
    rig.key(KeyCode.CONTROL, KeyCode.O).until(() -> rig.desk().notice().isPresent());
    rig.clickOn("notice-leave");
    rig.until(() -> !rig.desk().history().canUndo()).laid();
    rig.nextPlace(mine);
    rig.clickOn("step-sheets").clickOn("deed-write-sheets");
    rig.until(() -> rig.desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().lines())
        .as("of a plan opened anew")
        .contains(stem + "cut-sheet-9.png", String.valueOf(pdf.getFileName()));
    rig.clickOn("notice-over");
    rig.until(() -> rig.desk().notice().filter(n -> n.next().isEmpty()).isPresent());
    assertThat(rig.desk().notice().orElseThrow().lines())
        .anyMatch(l -> l.contains("cut-sheet-9.png"));
  }

  private String focused() {
    return Rig.get(() -> rig.designer().pane().getScene().getFocusOwner().getId());
  }

  private void askForSheets() {
    rig.nextPlace(folder);
    rig.clickOn("step-sheets").clickOn("deed-write-sheets");
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    Rig.pulses(3);
  }

  /** Another day is another window. */
  @Test
  void itsOwnSheetsAreKnownAgainAnotherDay() throws IOException {
    openSample();
    askForSheets();
    close();
    open();
    openSample();
    askForSheets();
    assertThat(rig.desk().notice().orElseThrow().key()).isEqualTo("window.notice.written");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).noneMatch(f -> f.toString().endsWith("~"));
    }
    Path pdf = rig.desk().papers().sheets().orElseThrow().files().getFirst();
    close();
    Files.writeString(pdf, "% marked", StandardOpenOption.APPEND);
    open();
    openSample();
    askForSheets();
    assertThat(rig.desk().notice().orElseThrow().key()).isEqualTo("window.notice.written");
    assertThat(pdf.resolveSibling(pdf.getFileName() + "~"))
        .as("marked within the minute, and kept")
        .exists();
    close();
    Files.setLastModifiedTime(pdf, FileTime.from(Instant.now().plusSeconds(90)));
    open();
    openSample();
    askForSheets();
    assertThat(rig.desk().notice().orElseThrow().key())
        .as("somebody has marked it up")
        .isEqualTo("window.notice.overSheets");
  }

  @Test
  void theKeysOfTheCardThatAsksWriteOverNothingUntilTheyAreLedThere() throws IOException {
    openSample();
    Path agreed = folder.resolve("Straight drive-sheets.pdf");
    Files.writeString(agreed, "agreed");
    askForSheets();
    assertThat(rig.desk().notice().orElseThrow().lines()).hasSize(1);
    assertThat(focused()).isEqualTo("notice-stay");
    rig.key(KeyCode.ENTER);
    assertThat(rig.desk().notice()).as("Enter stays").isEmpty();
    assertThat(focused()).as("the keys are the paper’s again").isEqualTo("plan");
    askForSheets();
    rig.key(KeyCode.ESCAPE);
    assertThat(rig.desk().notice()).as("Esc stays").isEmpty();
    assertThat(agreed).hasContent("agreed");
    assertThat(folder.resolve(agreed.getFileName() + "~")).doesNotExist();
    askForSheets();
    rig.key(KeyCode.SHIFT, KeyCode.TAB);
    assertThat(focused()).isEqualTo("notice-over");
    rig.key(KeyCode.TAB);
    assertThat(focused()).isEqualTo("notice-stay");
    rig.key(KeyCode.SHIFT, KeyCode.TAB).key(KeyCode.SPACE);
    rig.until(() -> rig.desk().notice().filter(n -> n.next().isEmpty()).isPresent());
    assertThat(folder.resolve(agreed.getFileName() + "~")).hasContent("agreed");
    assertThat(focused()).as("of the card that says so").isIn("notice-show", "notice-putAway");
  }

  @Test
  void anOutlineHalfDrawnIsNotLostByANewPlan() {
    rig.type("20'").key(KeyCode.ENTER);
    rig.act(() -> rig.designer().job().next(Notice.Next.BEGIN));
    assertThat(rig.desk().notice().orElseThrow().isHalfDrawn()).isTrue();
    rig.clickOn("notice-stay");
    assertThat(rig.desk().draft()).isPresent();
  }

  @Test
  void aNameThatBecomesThatOfAnotherFileIsRefused() throws IOException {
    drawASlab();
    Path file = folder.resolve("foo.jointwright.json");
    Files.writeString(file, "mine");
    rig.nextPlace(folder.resolve("foo"));
    rig.key(KeyCode.CONTROL, KeyCode.S);
    assertThat(rig.desk().notice().orElseThrow().isTrouble()).isTrue();
    assertThat(file).hasContent("mine");
  }

  @Test
  void aFaultThatNothingCaughtIsToldInTheWindow() {
    drawASlab();
    rig.act(() -> rig.designer().tell(new IllegalStateException("odd")));
    assertThat(rig.desk().notice().orElseThrow().lines()).containsExactly("odd");
    assertThat(rig.plan().slabs()).hasSize(1);
  }
}
