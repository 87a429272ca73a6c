package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The number of a long box-out, such as a trench drain, stands beside it. */
class LongBoxOutTest {
  /** From the middle of the number to the filler, at most, millimetres. */
  private static final double BESIDE = 8;

  private static final String PLAN =
      """
      {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "pad",
        "outline": [[0, 0], [24, 0], [24, 30], [0, 30]],
        "joints": [
          {"path": [[0, 10], [24, 10]]},
          {"path": [[8, 0], [8, 19.75]]}, {"path": [[8, 20.92], [8, 30]]},
          {"path": [[16, 0], [16, 19.75]]}, {"path": [[16, 20.92], [16, 30]]},
          {"kind": "isolation", "path": [[0, 19.75], [24, 19.75]]},
          {"kind": "isolation", "path": [[0, 20.92], [24, 20.92]]}],
        "boxouts": [{"fixed": "trench", "ring": [[0, 19.75], [24, 19.75], [24, 20.92], [0, 20.92]]}]
        }],
        "fixed": [{"id": "trench", "slab": "pad", "kind": "drain",
          "shape": {"ring": [[0, 20], [24, 20], [24, 20.67], [0, 20.67]]}}]}
      """;

  @Test
  void theNumberStandsBesideTheTrench(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("trench.jointwright.json");
    Files.writeString(file, PLAN);
    PlanReading.ReadPlan read = (PlanReading.ReadPlan) PlanReader.read(file);
    List<Mark> marks = LaidPlans.pages(read.plan()).getFirst().marks();
    List<Mark.Group> numbers = groups(marks).filter(g -> g.name().equals("number-6")).toList();
    assertThat(numbers).hasSize(1);
    Point at = middle(numbers.getFirst());
    double nearest =
        fillers(marks)
            .flatMap(l -> l.path().edges().stream())
            .mapToDouble(e -> e.distance(at))
            .min()
            .orElseThrow();
    assertThat(nearest).isLessThan(BESIDE);
  }

  private static Point middle(Mark.Group number) {
    return number.marks().stream()
        .flatMap(m -> m instanceof Mark.Words w ? Stream.of(w.at()) : Stream.empty())
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Mark.Group> groups(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                m instanceof Mark.Group g
                    ? Stream.concat(Stream.of(g), groups(g.marks()))
                    : Stream.empty());
  }

  /** The filler's lines, the borders of numbers left out. */
  private static Stream<Mark.Line> fillers(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                switch (m) {
                  case Mark.Line l when l.role() == Role.FILLER_LINE -> Stream.of(l);
                  case Mark.Group g when !g.name().startsWith("number-") -> fillers(g.marks());
                  default -> Stream.empty();
                });
  }
}
