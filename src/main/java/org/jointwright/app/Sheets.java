package org.jointwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.file.save.SafeSave;
import org.jointwright.plan.Job;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.CutSheet;
import org.jointwright.sheet.FormSheet;
import org.jointwright.sheet.OrderSheet;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.owner.OwnersPlan;
import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.SheetFile;
import org.jointwright.sheet.pdf.SheetFiles;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/** Prints sheets: an SVG and a PNG of each page, and one PDF of them all. */
public final class Sheets {
  private static final Pattern OF_A_PLAN = Pattern.compile("(\\.jointwright)?\\.json$");
  private static final Pattern ENDING = Pattern.compile("\\.(svg|pdf)$");
  private static final Pattern OF_A_SHEET =
      Pattern.compile(
          Arrays.stream(SheetKind.values())
              .map(SheetKind::file)
              .collect(Collectors.joining("|", "(^|-)(" + "sheets|", ")(-\\d+)?\\.(svg|pdf)$")));
  private static final String SEVERAL = "sheets";

  private Sheets() {}

  /**
   * What is to be printed.
   *
   * @param kinds which sheets, in the order of their set
   * @param words the language and the measures they are printed in
   * @param paper the name of the paper, one of {@link #papers}
   * @param how whether the order sheet says how its amounts were worked out
   */
  public record Wanted(List<SheetKind> kinds, Words words, String paper, boolean how) {
    /** Copies the list. */
    public Wanted {
      kinds = List.copyOf(kinds);
    }

    /** Amounts alone on the order sheet. */
    public Wanted(List<SheetKind> kinds, Words words, String paper) {
      this(kinds, words, paper, false);
    }

    /** One kind on letter paper. */
    public static Wanted of(SheetKind kind, Words words) {
      return new Wanted(List.of(kind), words, Paper.LETTER.name());
    }
  }

  /** The names of the papers there are. */
  public static List<String> papers() {
    return Paper.ALL.stream().map(Paper::name).toList();
  }

  /**
   * Writes the files of sheets into a folder, which is made where there is none; none of them
   * before all are made. Another PDF of that name is kept beside them as {@code NAME~}.
   *
   * @param answer the plan with its joints, and what the rules say of it: what is open stands on
   *     the sheets
   * @param stem the start of the files' names; empty for none
   * @param goOn asked for each page; once it says no, nothing is written
   * @return the files, the PDF first; none where it was told to stop
   * @throws IOException when they cannot be written; what was there is then as it was
   * @throws UnprintableException when a text of the plan has letters that the sheets' font lacks
   */
  public static List<Path> write(
      Answer answer, Wanted wanted, Path folder, String stem, BooleanSupplier goOn)
      throws IOException, UnprintableException {
    return write(answer, wanted, folder, stem, Set.of(), goOn);
  }

  /**
   * The same.
   *
   * @param own files that whoever writes has written a moment ago: of these none is kept, so that
   *     what was kept beside them stays
   */
  public static List<Path> write(
      Answer answer, Wanted wanted, Path folder, String stem, Set<Path> own, BooleanSupplier goOn)
      throws IOException, UnprintableException {
    SheetSet set = set(answer, wanted).from(origin(answer.plan()));
    List<String> names = wanted.kinds().stream().map(k -> named(stem, k.file())).toList();
    String whole = names.size() == 1 ? names.getFirst() : named(stem, SEVERAL);
    Map<Path, byte[]> files = new LinkedHashMap<>();
    for (SheetFile file : SheetFiles.of(set, whole, names, goOn)) {
      files.put(folder.resolve(file.name()), file.bytes());
    }
    if (files.isEmpty() || !goOn.getAsBoolean()) {
      return List.of();
    }
    Files.createDirectories(folder);
    // A PDF holds the plan as it was agreed on: that is not made again from a plan gone further.
    SafeSave.saveAll(files, f -> f.toString().endsWith(".pdf") && !own.contains(f));
    return new ArrayList<>(files.keySet());
  }

  /**
   * The files in a folder that have the names of these sheets, whatever they hold: what may be
   * written over, for how many pages there will be is not known yet. In the order of their names.
   *
   * @throws IOException when the folder cannot be looked into
   */
  public static List<Path> there(Wanted wanted, Path folder, String stem) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    String names =
        wanted.kinds().stream()
            .map(k -> Pattern.quote(named(stem, k.file())))
            .collect(Collectors.joining("|"));
    Pattern sheet =
        Pattern.compile(
            wanted.kinds().size() == 1
                ? "(" + names + ")((-\\d+)?\\.(svg|png)|\\.pdf)"
                : "("
                    + names
                    + ")(-\\d+)?\\.(svg|png)|"
                    + Pattern.quote(named(stem, SEVERAL))
                    + "\\.pdf");
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> sheet.matcher(String.valueOf(f.getFileName())).matches())
          .sorted()
          .toList();
    }
  }

  /** The sheets bound together. */
  static SheetSet set(Answer answer, Wanted wanted) throws UnprintableException {
    UnprintableException.check(answer.plan());
    SheetOptions options = options(answer, wanted);
    // The crew's takes longer than all others together; they are made beside it.
    List<Sheet> sheets =
        wanted.kinds().parallelStream().map(k -> sheet(k, answer, options)).toList();
    return SheetSet.of(sheets, answer.plan().job(), options);
  }

  private static Sheet sheet(SheetKind kind, Answer answer, SheetOptions options) {
    return switch (kind) {
      case OWNER -> OwnersPlan.sheet(answer.layout(), takeoff(answer, options), options);
      case CREW -> CutSheet.sheet(answer.layout(), options);
      case FORMS -> FormSheet.sheet(answer.layout(), takeoff(answer, options), options);
      case PLANT -> OrderSheet.sheet(answer.plan(), takeoff(answer, options), options);
    };
  }

  private static Takeoff takeoff(Answer answer, SheetOptions options) {
    return Takeoff.of(answer.layout(), options.words().units());
  }

  /** What a sheet is printed with: what is open is said on it. */
  private static SheetOptions options(Answer answer, Wanted wanted) {
    List<String> open =
        answer.findings().stream()
            .filter(f -> f.severity() != Severity.NOTE)
            .map(Finding::rule)
            .toList();
    Paper paper = Paper.of(wanted.paper()).orElseThrow();
    // No date of today's: the same plan gives the same sheet.
    return new SheetOptions("", wanted.words(), paper, open, wanted.how());
  }

  private static Origin origin(Plan plan) {
    String program = Program.NAME + " " + Program.VERSION;
    return new Origin(Lines.known(plan.job().name()), program, PlanFiles.text(plan));
  }

  private static String named(String stem, String sheet) {
    return stem.isEmpty() ? sheet : stem + "-" + sheet;
  }

  /** The start of the names of a plan's sheets: after its job, or else after its file. */
  public static String stem(Job job, Optional<Path> plan) {
    return FileNames.of(job).orElseGet(() -> stem(plan));
  }

  /**
   * The start of the names of a plan's sheets, after its file; empty where there is none. After a
   * sheet that was opened again, the start of that sheet's own name.
   */
  public static String stem(Optional<Path> plan) {
    return plan.map(Path::getFileName)
        .map(Path::toString)
        .map(n -> OF_A_PLAN.matcher(n).replaceFirst(""))
        .map(Sheets::withoutSheet)
        .orElse("");
  }

  /** Without what sheets are called, however often it stands there after a file was renamed. */
  private static String withoutSheet(String name) {
    String less = OF_A_SHEET.matcher(name).replaceFirst("");
    return less.equals(name) ? ENDING.matcher(name).replaceFirst("") : withoutSheet(less);
  }
}
