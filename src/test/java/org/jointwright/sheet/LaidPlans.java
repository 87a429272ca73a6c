package org.jointwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.owner.OwnersPlan;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/** Plans with good joints in them, made by hand and by search apart from the program. */
public final class LaidPlans {
  private static final Path CASES = Path.of("src", "test", "resources", "cases");
  private static final Path FOLDER = CASES.resolve("laid");

  /**
   * Plans as a crew would hold them, with more on a page than the cases, which show one thing each.
   */
  private static final Path CROWDED = CASES.resolve("crowded");

  private static final Path SAMPLES = Path.of("samples");
  private static final Map<String, Plan> PLANS = new ConcurrentHashMap<>();
  private static final Map<String, List<Page>> PAGES = new ConcurrentHashMap<>();

  private LaidPlans() {}

  /** The names of all, and of the samples, whose joints the program lays itself. */
  public static List<String> names() {
    return Stream.of(FOLDER, CROWDED, SAMPLES).flatMap(LaidPlans::names).toList();
  }

  /** The names of those with more on a page than one thing. */
  static List<String> crowded() {
    return names(CROWDED).toList();
  }

  /** The names of the samples. */
  static List<String> samples() {
    return names(SAMPLES).toList();
  }

  private static Stream<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".json"))
          .map(f -> f.replace(".json", ""))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of them. */
  public static Plan plan(String name) {
    return PLANS.computeIfAbsent(name, LaidPlans::read);
  }

  private static Plan read(String name) {
    Path folder =
        Stream.of(FOLDER, CROWDED, SAMPLES)
            .filter(f -> Files.exists(f.resolve(name + ".json")))
            .findFirst()
            .orElseThrow();
    PlanReading reading = PlanReader.read(folder.resolve(name + ".json"));
    if (reading instanceof PlanReading.ReadPlan read) {
      return folder.equals(SAMPLES) ? LayoutEngine.lay(read.plan()).plan() : read.plan();
    }
    throw new AssertionError(name + " was refused: " + reading);
  }

  /** The pages of one of them, made once. */
  public static List<Page> pages(String name) {
    return PAGES.computeIfAbsent(name, n -> pages(plan(n)));
  }

  /** The PDF of one of them. */
  public static byte[] pdf(String name) {
    return pdf(pages(name));
  }

  /** The pages of a plan's cut sheet on letter paper. */
  public static List<Page> pages(Plan plan) {
    return pages(plan, Words.english(UnitSystem.of(plan.unit())));
  }

  private static List<Page> pages(Plan plan, Words words) {
    return CutSheet.of(Layouts.of(plan), options(words));
  }

  /** The pages of one of them's cut sheet in those words and on that paper, made once. */
  public static List<Page> cut(String name, Words words, Paper paper) {
    return pages(name, Kind.CUT, words, paper);
  }

  /** A kind of sheet. */
  public enum Kind {
    OWNER,
    CUT,
    FORMS,
    ORDER
  }

  /** The numbered pages of a sheet of one of them, made once. */
  static List<Page> pages(String name, Kind kind, Words words, Paper paper) {
    String key = String.join(" ", name, kind.name(), paper.name()) + words.locale() + words.units();
    return PAGES.computeIfAbsent(key, k -> made(name, kind, words, paper));
  }

  /** The same, made anew: there are too many to keep them all. */
  static List<Page> made(String name, Kind kind, Words words, Paper paper) {
    Plan plan = plan(name);
    SheetOptions options = new SheetOptions("2026-05-04", words, paper);
    return SheetSet.of(List.of(sheet(plan, kind, options)), plan.job(), options).pages();
  }

  private static Sheet sheet(Plan plan, Kind kind, SheetOptions options) {
    Layout layout = Layouts.of(plan);
    Takeoff takeoff = Takeoff.of(layout, options.words().units());
    return switch (kind) {
      case OWNER -> OwnersPlan.sheet(layout, takeoff, options);
      case CUT -> CutSheet.sheet(layout, options);
      case FORMS -> FormSheet.sheet(layout, takeoff, options);
      case ORDER -> OrderSheet.sheet(plan, takeoff, options);
    };
  }

  private static SheetOptions options(Words words) {
    return new SheetOptions("2026-05-04", words, Paper.LETTER);
  }

  /** A plan's cut sheet as a PDF. */
  public static byte[] pdf(Plan plan) {
    return pdf(pages(plan));
  }

  private static byte[] pdf(List<Page> pages) {
    return PdfSheet.bytes(
        new SheetSet("Cut sheet", Locale.ENGLISH, Optional.empty(), List.of(), pages));
  }
}
