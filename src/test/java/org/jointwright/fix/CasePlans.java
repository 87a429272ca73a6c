package org.jointwright.fix;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Plan;

/**
 * A case with its joints as they stand.
 *
 * @param name the name of its file
 * @param asked the plan that was given
 * @param layout what was laid for it
 */
record CasePlans(String name, Plan asked, Layout layout) {
  private static final String ENDING = ".json";
  private static final String ASKED = ".asked.json";

  /** The cases of a folder, in the order of their names. */
  static List<CasePlans> in(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(ENDING) && !f.toString().endsWith(ASKED))
          .sorted()
          .map(CasePlans::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CasePlans read(Path file) {
    String name = file.getFileName().toString().replace(ENDING, "");
    Path asked = file.resolveSibling(name + ASKED);
    Plan laid = plan(file);
    return new CasePlans(name, Files.exists(asked) ? plan(asked) : laid, Layouts.of(laid));
  }

  private static Plan plan(Path file) {
    return switch (PlanReader.read(file)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused ->
          throw new IllegalStateException(file + " is refused: " + refused.problems());
    };
  }

  @Override
  public String toString() {
    return name;
  }
}
