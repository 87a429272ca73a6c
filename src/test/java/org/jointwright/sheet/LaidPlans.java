package org.jointwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.text.Words;

/** Plans with good joints in them, made by hand and by search apart from the program. */
public final class LaidPlans {
  private static final Path FOLDER = Path.of("src", "test", "resources", "cases", "laid");

  private static final Map<String, List<Page>> PAGES = new ConcurrentHashMap<>();

  private LaidPlans() {}

  /** The names of all. */
  public static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".json"))
          .map(f -> f.replace(".json", ""))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of them. */
  public static Plan plan(String name) {
    PlanReading reading = PlanReader.read(FOLDER.resolve(name + ".json"));
    if (reading instanceof PlanReading.ReadPlan read) {
      return read.plan();
    }
    throw new AssertionError(name + " was refused: " + reading);
  }

  /** The pages of one of them, made once. */
  public static List<Page> pages(String name) {
    return PAGES.computeIfAbsent(name, n -> pages(plan(n)));
  }

  /** The PDF of one of them. */
  public static byte[] pdf(String name) {
    return PdfSheet.bytes(pages(name), "Cut sheet", Optional.empty());
  }

  /** The pages of a plan's cut sheet on letter paper. */
  public static List<Page> pages(Plan plan) {
    Words words = Words.english(UnitSystem.of(plan.unit()));
    return CutSheet.of(Layouts.of(plan), new SheetOptions("2026-05-04", words, Paper.LETTER));
  }

  /** A plan's cut sheet as a PDF. */
  public static byte[] pdf(Plan plan) {
    return PdfSheet.bytes(pages(plan), "Cut sheet", Optional.empty());
  }
}
