package org.jointwright.cases;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;

/**
 * Makes the page of drags anew: {@code mvn -q -Pdrags}. Told parts of names, it prints the rows of
 * the cases and families that hold one of them, and leaves the page alone.
 */
final class DragTable {
  static final Path PAGE = Path.of("src/docs/DRAGS.md");

  /** So many steps of one drag of each case are laid anew as well, which takes long. */
  private static final int SAMPLED = 24;

  /** Parts of the names of the cases that are sampled: those that are laid quickly. */
  private static final List<String> SAMPLE =
      List.of(
          "edges_patio",
          "hammerhead",
          "jog_",
          "multi_",
          "plus_pad",
          "rect_",
          "square_off",
          "T_pad",
          "trapezoid",
          "triangle",
          "U_patio",
          "units_",
          "user_rule",
          "walk_");

  private DragTable() {}

  public static void main(String[] parts) throws IOException {
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      List<DragRow> rows = new ArrayList<>();
      for (OpenCase open : OpenCase.all()) {
        if (parts.length == 0 || open.isNamedBy(List.of(parts))) {
          rows.add(row(open));
          out.println(DragPage.row(rows.getLast()));
        }
      }
      if (parts.length == 0) {
        Files.writeString(PAGE, DragPage.of(rows));
        out.println(PAGE);
      } else {
        out.println(DragPage.sum(rows));
      }
    }
  }

  /** All drags of a case. */
  static DragRow row(OpenCase open) {
    Plan plan = open.plan();
    Layout start = LayoutEngine.first(plan);
    DragRow row = new DragRow(open);
    List<Drag> drags = Drag.all(plan);
    for (int i = 0; i < drags.size(); i++) {
      List<Plan> plans = drags.get(i).plans();
      row.hand().add(whileItFits(start, plans));
      row.ask(plans.size());
      if (i == drags.size() / 2 && open.isNamedBy(SAMPLE)) {
        List<Plan> some = plans.subList(0, Math.min(SAMPLED, plans.size()));
        row.sampled().add(kept(start, some));
        row.anew().add(anew(start, some));
      }
    }
    return row;
  }

  /** The pattern fitted to one step after another, up to the first that it does not fit. */
  private static List<Layout> whileItFits(Layout start, List<Plan> plans) {
    List<Layout> shown = new ArrayList<>(List.of(start));
    for (Plan plan : plans) {
      Optional<Layout> kept = LayoutEngine.refit(start, plan);
      if (kept.isEmpty()) {
        return shown;
      }
      shown.add(kept.get());
    }
    return shown;
  }

  /** As the window shows it: the pattern kept while it fits, another only where it does not. */
  private static List<Layout> kept(Layout start, List<Plan> plans) {
    List<Layout> shown = new ArrayList<>(List.of(start));
    Layout base = start;
    for (Plan plan : plans) {
      Optional<Layout> kept = LayoutEngine.refit(base, plan);
      Layout next = kept.orElseGet(() -> LayoutEngine.first(plan));
      base = kept.isPresent() ? base : next;
      shown.add(next);
    }
    return shown;
  }

  /** As it was without keeping: laid anew at each step. */
  private static List<Layout> anew(Layout start, List<Plan> plans) {
    List<Layout> shown = new ArrayList<>(List.of(start));
    plans.forEach(p -> shown.add(LayoutEngine.first(p)));
    return shown;
  }

  static String share(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
