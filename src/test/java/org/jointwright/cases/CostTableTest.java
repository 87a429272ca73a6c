package org.jointwright.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.joint.Layouts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of costs tells of every case, and says what the engine lays today. */
class CostTableTest {
  /** A ratio above this, or below 1 by as much as rounding leaves, wants a remark. */
  private static final double DEAR = 1.10;

  private static final double CHEAP = 0.95;

  private static List<String> rows() throws IOException {
    return Files.readString(CostTable.PAGE)
        .replace("\r", "")
        .lines()
        .dropWhile(l -> !l.equals("## By case"))
        .filter(l -> l.startsWith("| ") && !l.startsWith("| family"))
        .toList();
  }

  private static List<String> cells(String row) {
    return Arrays.stream(row.split("\\|", -1)).map(String::strip).toList();
  }

  private static OpenCase named(String name) {
    return OpenCase.all().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void everyCaseHasItsRowUnderItsFamily() throws IOException {
    assertThat(rows())
        .extracting(r -> cells(r).get(1) + " " + cells(r).get(2))
        .containsExactlyElementsOf(
            OpenCase.all().stream().map(c -> c.family() + " " + c.name()).toList());
  }

  @Test
  void everyOpenPlanIsACase() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/cases/open"))) {
      assertThat(files.map(f -> f.getFileName().toString().replace(".json", "")))
          .containsExactlyInAnyOrderElementsOf(
              OpenCase.all().stream().map(OpenCase::name).toList());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rect_slab_31x47_6in",
        "user_locked_construction_28x24_5in",
        "T_pad_40x30_5in",
        "multi_drive_approach_walk",
        "walk_5ft_45deg_bend_4in",
        "fixed_drain_24x20_5in"
      })
  void aRowSaysWhatIsLaidToday(String name) throws IOException {
    assertThat(rows())
        .as("the page is out of date: mvn -q -Pcost")
        .contains(CostTable.row(CostRow.lay(named(name))));
  }

  @Test
  void whatCostsMuchMoreOrLessThanTheBestKnownIsExplained() throws IOException {
    Map<String, String> remarks = CostTable.remarks();
    assertThat(rows())
        .filteredOn(
            r -> {
              String ratio = cells(r).get(5);
              return !ratio.equals("-")
                  && (Double.parseDouble(ratio) > DEAR || Double.parseDouble(ratio) < CHEAP);
            })
        .extracting(r -> cells(r).get(2))
        .allSatisfy(name -> assertThat(remarks).containsKey(name));
    assertThat(OpenCase.all().stream().map(OpenCase::name).collect(Collectors.toSet()))
        .as("remarks on no case")
        .containsAll(remarks.keySet());
  }

  /** 142 ft of joint, one tee, areas that vary by 0.3579: 142 + 8 + 142 / 4 x 0.2579. */
  @Test
  void theCostIsLengthTeesAndUnevenness() {
    OpenCase hammer = named("hammerhead_12x36_bar50_5in");
    Measured best = Measured.of(hammer.plan(), Layouts.of(hammer.reference()));
    assertThat(best.cost()).isCloseTo(159.16, within(0.05));
    assertThat(best.tees()).isEqualTo(1);
    assertThat(best.panels()).isEqualTo(13);
  }
}
