package org.jointwright.layout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.plan.Plan;

/**
 * An invented plan by its family and seed.
 *
 * @param kind the family
 * @param seed the seed
 */
record Seeded(StraightPlans.Kind kind, long seed) implements Comparable<Seeded> {
  private static final Path KEPT = Path.of("src/test/resources/cases/seeded.txt");

  /** The plan of a name like {@code L-3}. */
  static Seeded named(String name) {
    int dash = name.lastIndexOf('-');
    return new Seeded(
        StraightPlans.Kind.valueOf(name.substring(0, dash)),
        Long.parseLong(name.substring(dash + 1)));
  }

  /** Those that once went wrong, each with what was wrong and whether it is mended. */
  static Map<Seeded, String> kept() throws IOException {
    Map<Seeded, String> found = new TreeMap<>();
    for (String line : Files.readAllLines(KEPT, StandardCharsets.UTF_8)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        int space = line.indexOf(' ');
        found.put(named(line.substring(0, space)), line.substring(space + 1).strip());
      }
    }
    return found;
  }

  /** What it is called in lists and reports. */
  String name() {
    return kind + "-" + seed;
  }

  /** The plan. */
  Plan plan() {
    return StraightPlans.of(kind, seed);
  }

  @Override
  public int compareTo(Seeded other) {
    return Comparator.comparing(Seeded::kind).thenComparing(Seeded::seed).compare(this, other);
  }
}
