package org.jointwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Plan;
import org.jspecify.annotations.Nullable;

/** Plans whose broken rules the independent verifier has listed. */
public final class Verified {
  private final String folder;

  public Verified(String folder) {
    this.folder = folder;
  }

  /** Plan by plan the broken rules, {@code "drive M1"} for example. */
  public Map<String, Set<String>> expected() {
    Map<String, Set<String>> all = new LinkedHashMap<>();
    for (List<String> row : rows("expected.csv")) {
      Set<String> broken = all.computeIfAbsent(row.get(0), k -> new TreeSet<>());
      if (!row.get(1).isEmpty()) {
        broken.add(row.get(1) + " " + row.get(2));
      }
    }
    return all;
  }

  /** The rows of a table, its head left out. */
  public List<List<String>> rows(String table) {
    return Objects.requireNonNull(text(table))
        .lines()
        .skip(1)
        .map(line -> List.of(line.split(",", -1)))
        .toList();
  }

  /** The plan of that name. */
  public Plan plan(String name) {
    return read(Objects.requireNonNull(text(name + ".json"), name));
  }

  /** The plan that was given where it differs from what was laid. */
  public Plan asked(String name) {
    String text = text(name + ".asked.json");
    return text == null ? plan(name) : read(text);
  }

  private static Plan read(String text) {
    return switch (PlanReader.read(text)) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }

  private @Nullable String text(String name) {
    try (InputStream in = Verified.class.getResourceAsStream("/cases/" + folder + "/" + name)) {
      return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The broken rules of a judgement, written as {@link #expected} writes them. */
  public static Set<String> broken(Judgement judgement) {
    return judgement.of(Severity.MUST).stream()
        .map(f -> f.slab() + " " + f.rule())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
