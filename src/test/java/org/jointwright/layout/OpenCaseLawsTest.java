package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.check.Moved;
import org.jointwright.check.figure.Figures;
import org.jointwright.file.PlanWriter;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where an open case stands and which way it faces change neither its cost nor its counts. A few
 * quick ones; all of them with {@code mvn -q test -Dtest=OpenCaseLawsTest -Dlaws=all}, those whose
 * name holds a word with {@code -Dlaws=yard}.
 */
class OpenCaseLawsTest {
  private static final Point TEN_MILES = new Point(633_600, -633_600);

  /** A search that follows another order of equals may end this much dearer. */
  private static final double ALIKE = 1.005;

  private static final List<String> QUICK =
      List.of(
          "acute_70deg_landing_7x5_4in",
          "circle_r9_4in",
          "edges_patio_in_house_corner_4in",
          "multi_shared_edge_drive_and_walk",
          "rect_drive_20x40_4in",
          "rect_lane_11x96_5in",
          "square_off_20_0x40_3_4in",
          "steps_four_of_4ft_4in",
          "units_mm_6000x9500",
          "user_locked_centre_joint_24x40_4in",
          "walk_4ft_right_bend_4in");

  static List<String> cases() {
    String asked = System.getProperty("laws", "");
    if (asked.isEmpty()) {
      return QUICK;
    }
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/cases/open"))) {
      return files
          .map(f -> f.getFileName().toString().replace(".json", ""))
          .filter(n -> asked.equals("all") || n.contains(asked))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Figures figures(Plan plan) {
    return Figures.of(plan, LayoutEngine.first(plan));
  }

  private static void assertAlike(String how, Figures one, Figures other) {
    assertThat(other.tees() + " tees, " + other.ys() + " ys, " + other.panels() + " panels")
        .as(how)
        .isEqualTo(one.tees() + " tees, " + one.ys() + " ys, " + one.panels() + " panels");
    assertThat(other.cost()).as(how).isBetween(one.cost() / ALIKE, one.cost() * ALIKE);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whereItStandsAndHowItFacesDoNotMatter(String name) {
    Plan plan = Cases.plan(name);
    Figures figures = figures(plan);
    Moved away = Moved.turnedBy(0, TEN_MILES);
    assertAlike("ten miles away: " + name, figures, figures(away.plan(plan)));
    Moved quarter = new Moved(p -> new Point(-p.y(), p.x()));
    assertAlike("a quarter turn round: " + name, figures, figures(quarter.plan(plan)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void layingItTwiceGivesTheSameBytes(String name) {
    Plan plan = Cases.plan(name);
    assertThat(PlanWriter.write(LayoutEngine.first(plan).plan()))
        .isEqualTo(PlanWriter.write(LayoutEngine.first(plan).plan()));
  }
}
