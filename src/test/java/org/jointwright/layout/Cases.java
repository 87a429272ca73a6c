package org.jointwright.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Plan;

/** The plans kept as cases, read from their files. */
final class Cases {
  private static final Path OPEN = Path.of("src/test/resources/cases/open");

  private Cases() {}

  /** The names of all cases, in order. */
  static List<String> names() {
    try (Stream<Path> files = Files.list(OPEN)) {
      return files
          .map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".json"))
          .map(n -> n.substring(0, n.length() - ".json".length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The plan of a case. */
  static Plan plan(String name) {
    return switch (PlanReader.read(OPEN.resolve(name + ".json"))) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused ->
          throw new IllegalStateException(name + " is refused: " + refused.problems());
    };
  }
}
