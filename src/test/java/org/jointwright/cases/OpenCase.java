package org.jointwright.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Plan;

/**
 * A plan to lay out.
 *
 * @param name the name of its file, without the ending
 * @param family what shape or question it stands for
 */
record OpenCase(String name, String family) {
  private static final Path CASES = Path.of("src/test/resources/cases");
  private static final Path FAMILIES = CASES.resolve("families.properties");

  /** All of them, by family and then by name. */
  static List<OpenCase> all() {
    return new TreeMap<>(words(FAMILIES))
        .entrySet().stream()
            .map(e -> new OpenCase(e.getKey(), e.getValue()))
            .sorted(Comparator.comparing(OpenCase::family).thenComparing(OpenCase::name))
            .toList();
  }

  /** Whether one of these is a part of its name, or its family. */
  boolean isNamedBy(List<String> parts) {
    return parts.stream().anyMatch(p -> name.contains(p) || family.equals(p));
  }

  /** The plan as it is asked for. */
  Plan plan() {
    return read(CASES.resolve("open").resolve(name + ".json"));
  }

  /** The plan with the best layout known for it. */
  Plan reference() {
    return read(CASES.resolve("laid").resolve(name + ".json"));
  }

  /** The entries of a file of words, in no order. */
  static Map<String, String> words(Path file) {
    Properties words = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      words.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> all = new TreeMap<>();
    words.stringPropertyNames().forEach(k -> all.put(k, words.getProperty(k)));
    return all;
  }

  private static Plan read(Path file) {
    return switch (PlanReader.read(file)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused ->
          throw new IllegalStateException(file + " is refused: " + refused.problems());
    };
  }
}
