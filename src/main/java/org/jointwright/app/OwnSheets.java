package org.jointwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Plan;

/**
 * Knows the sheets of a plan again by the plan that they carry. Who has written them and comes back
 * another day loses nothing by writing over them.
 */
public final class OwnSheets {
  /**
   * Files of one writing are no farther apart; what was marked up since is. This program’s own
   * figure, no source.
   */
  private static final Duration ONE_GO = Duration.ofMinutes(1);

  private OwnSheets() {}

  /**
   * Those of some files that were written of one of these plans and left as they were written. A
   * picture carries no plan: it goes with the drawing of its name. A PDF is known by the drawings
   * that were written with it: were it touched since, it would be by itself.
   */
  public static Set<Path> among(List<Path> files, List<Plan> plans) {
    Set<String> texts = plans.stream().map(PlanFiles::text).collect(Collectors.toSet());
    Set<Path> own = new LinkedHashSet<>();
    for (Path pdf : ending(files, ".pdf")) {
      List<Path> together = files.stream().filter(f -> isOneGo(pdf, f)).toList();
      List<Path> drawings = ending(together, ".svg").stream().filter(f -> isOf(f, texts)).toList();
      if (!drawings.isEmpty() && isOf(pdf, texts)) {
        own.add(pdf);
        own.addAll(drawings);
        ending(together, ".png").stream()
            .filter(f -> drawings.contains(drawingOf(f)))
            .forEach(own::add);
      }
    }
    return own;
  }

  private static List<Path> ending(List<Path> files, String with) {
    return files.stream().filter(f -> f.toString().endsWith(with)).toList();
  }

  private static Path drawingOf(Path picture) {
    String name = String.valueOf(picture.getFileName());
    return picture.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ".svg");
  }

  private static boolean isOneGo(Path one, Path other) {
    Optional<Instant> a = written(one);
    Optional<Instant> b = written(other);
    return a.isPresent()
        && b.isPresent()
        && Duration.between(a.get(), b.get()).abs().compareTo(ONE_GO) <= 0;
  }

  /** When it was; empty where that is not to be had, and the file is taken for another’s. */
  private static Optional<Instant> written(Path file) {
    try {
      return Optional.of(Files.getLastModifiedTime(file).toInstant());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static boolean isOf(Path sheet, Set<String> texts) {
    return PlanFiles.open(sheet) instanceof PlanReading.ReadPlan read
        && read.isInSheet()
        && read.repairs().isEmpty()
        && texts.contains(PlanFiles.text(read.plan()));
  }
}
