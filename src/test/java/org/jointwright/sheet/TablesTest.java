package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.drawing.Mark;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.page.Page;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in which table of a sheet, and on which page. */
class TablesTest {
  @Test
  void crewIsToldTheFinish() {
    List<String> texts =
        LaidPlans.pages("drive-walk-and-pad.jointwright").stream()
            .flatMap(p -> PageTexts.of(p).stream())
            .toList();
    assertThat(texts).contains("Finish: drive, walk broom; pad exposed aggregate.");
    assertThat(LaidPlans.pages("rect_drive_20x40_4in"))
        .allMatch(p -> PageTexts.of(p).stream().noneMatch(t -> t.startsWith("Finish")));
  }

  /** The pours end at 13 ft 4 in and at 26 ft 8 in, listed the other way about. */
  private static final String POURS =
      """
      {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "yard",
        "thickness": "8 in", "outline": [[0, 0], [60, 0], [60, 40], [0, 40]],
        "joints": [
          {"kind": "construction", "path": [[0, "26 ft 8 in"], [60, "26 ft 8 in"]]},
          {"kind": "construction", "path": [[0, "13 ft 4 in"], [60, "13 ft 4 in"]]},
          {"path": [[15, 0], [15, 40]]}, {"path": [[30, 0], [30, 40]]},
          {"path": [[45, 0], [45, 40]]}]}]}
      """;

  /** Its column beside the plan is two sides too long when its diagonals are told large. */
  private static final String LONG_COLUMN =
      """
      {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "walk",
        "outline": [[0, 0], [12, 0], [12, 9], {"at": [30, 9], "via": [36, 20]}, [24, 30], [0, 30]],
        "joints": [
          {"path": [[0, 22.916666666666668], [35.30636828532473, 22.916666666666668]]},
          {"path": [[0, 16], [35.667797648202246, 16]]}, {"path": [[12, 9], [0, 9]]},
          {"path": [[8.75, 9], [5, 0]]}, {"path": [[8.75, 9], [8.75, 30]]},
          {"path": [[17.333333333333332, 9], [17.333333333333332, 30]]},
          {"path": [[25.75, 9], [25.75, 30.00739190400707]]}]}]}
      """;

  private static List<Page> pages(Path folder, String plan) throws IOException {
    Path file = folder.resolve("some.jointwright.json");
    Files.writeString(file, plan);
    return LaidPlans.pages(((PlanReading.ReadPlan) PlanReader.read(file)).plan());
  }

  @Test
  void jointsWhereAPourEndsAreFormedAndNotCut(@TempDir Path folder) throws IOException {
    List<Page> pages = pages(folder, POURS);
    assertThat(pages).hasSize(1);
    assertThat(texts(group(pages.getFirst(), "cut-joints")))
        .startsWith("cut", "from", "to", "long")
        .contains("1", "2", "3")
        .doesNotContain("4", "5");
    assertThat(texts(group(pages.getFirst(), "form-joints")))
        .startsWith("form", "from", "to", "long")
        .containsSubsequence("4", print(160) + " A–D", "5", print(320) + " A–D");
    assertThat(String.join(" ", texts(group(pages.getFirst(), "orders"))))
        .contains("One pour ends at 4, 5: set a bulkhead");
  }

  @Test
  void theSizeOfTheCutsStandsOverTheirTable(@TempDir Path folder) throws IOException {
    List<Page> pages = pages(folder, POURS);
    assertThat(texts(group(pages.getFirst(), "cut-joints"))).contains("⅛″ × 2″");
    assertThat(texts(group(pages.getFirst(), "form-joints"))).noneMatch(t -> t.contains("×"));
    String deeper =
        POURS.replace("{\"path\": [[30, 0]", "{\"depth\": \"3 in\", \"path\": [[30, 0]");
    assertThat(texts(group(pages(folder, deeper).getFirst(), "cut-joints")))
        .as("cuts of two sizes have none in common")
        .noneMatch(t -> t.contains("×"));
  }

  @Test
  void whereOthersMeetAJointIsListedOnceForEachPlace(@TempDir Path folder) throws IOException {
    String tees =
        """
        {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "pad",
          "outline": [[0, 0], [20, 0], [20, 20], [0, 20]],
          "joints": [{"path": [[0, 10], [20, 10]]}, {"path": [[8, 0], [8, 10]]},
            {"path": [[8, 10], [7, 20]]}, {"path": [[14, 10], [15, 20]]}]}]}
        """;
    List<Page> pages = pages(folder, tees);
    assertThat(texts(group(pages.getFirst(), "tees")))
        .startsWith("On joints")
        .anyMatch(t -> t.matches("[0-9]: 8′-0″, 14′-0″"));
    assertThat(groups(pages(folder, POURS).getFirst().marks()).map(Mark.Group::name))
        .doesNotContain("tees");
  }

  @Test
  void twoLinesOverSpareThePageTheyWouldNeed(@TempDir Path folder) throws IOException {
    List<Page> pages = pages(folder, LONG_COLUMN);
    assertThat(pages).hasSize(1);
    assertThat(texts(group(pages.getFirst(), "sides"))).anyMatch(x -> x.matches("A.F.30.*"));
  }

  private static String print(double inches) {
    return Words.english(UnitSystem.FEET_INCHES).print(Length.inches(inches));
  }

  private static Mark.Group group(Page page, String name) {
    return groups(page.marks())
        .filter(g -> g.name().equals(name))
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  private static Stream<Mark.Group> groups(List<Mark> marks) {
    return marks.stream()
        .flatMap(m -> m instanceof Mark.Group g ? Optional.of(g).stream() : Stream.empty())
        .flatMap(g -> Stream.concat(Stream.of(g), groups(g.marks())));
  }

  private static List<String> texts(Mark.Group group) {
    return group.marks().stream()
        .flatMap(
            m ->
                switch (m) {
                  case Mark.Words w -> Stream.of(w.text());
                  case Mark.Group g -> texts(g).stream();
                  default -> Stream.empty();
                })
        .toList();
  }
}
