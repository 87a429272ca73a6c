package org.jointwright.cases;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/**
 * How long a search goes on after it is told to stop: {@code mvn -q -Pstops} makes the page of it
 * anew. Told parts of names, it prints the rows of the cases that hold one of them, with what the
 * search was about in its longest stretch, and leaves the page alone.
 */
final class StopTable {
  private static final Path PAGE = Path.of("src/docs/STOPS.md");
  private static final double LONG = 50;
  private static final String HEAD =
      """
      # How soon a search stops

      While a plan is laid, a newer one may come. A search asks at its steps whether to go on, and stops at the first no; so what
      matters is the longest stretch from one question to the next. Here it is for every open case and some large yards,
      by the processor’s time of the thread that searches, in milliseconds (the wall clock would count other programs in). The page is
      made by `mvn -q -Pstops`; figures depend on the machine. *First* is the search that answers at once, *full* the one after it, which
      asks in the same places and more.

      """;

  /** Asks, and keeps what was longest between one question and the next. */
  private static final class Asked implements BooleanSupplier {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final boolean tells;
    private long last = threads.getCurrentThreadCpuTime();
    private long longest;
    private long asks;
    private List<String> from = List.of();
    private String told = "";

    Asked(boolean tells) {
      this.tells = tells;
    }

    @Override
    public boolean getAsBoolean() {
      asks++;
      note();
      return true;
    }

    void note() {
      long now = threads.getCurrentThreadCpuTime();
      List<String> here = tells ? frames() : List.of();
      if (now - last > longest) {
        longest = now - last;
        told = from + " to " + here;
      }
      from = here;
      last = threads.getCurrentThreadCpuTime();
    }

    private static List<String> frames() {
      return StackWalker.getInstance()
          .walk(
              s ->
                  s.map(f -> f.getClassName() + "." + f.getMethodName() + ":" + f.getLineNumber())
                      .filter(f -> f.startsWith("org.jointwright.layout"))
                      .map(f -> f.substring("org.jointwright.layout.".length()))
                      .limit(9)
                      .toList());
    }
  }

  private record Row(String name, boolean full, double millis, long asks, double longest) {}

  private StopTable() {}

  public static void main(String[] parts) throws IOException {
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      List<Row> rows = new ArrayList<>();
      boolean tells = parts.length > 0;
      measured("warm", yard(80, 50, 0), true, false, out);
      for (OpenCase open : OpenCase.all()) {
        if (parts.length == 0 || open.isNamedBy(List.of(parts))) {
          rows.add(measured(open.name(), open.plan(), true, tells, out));
        }
      }
      for (int side : new int[] {150, 470}) {
        String name = "yard-of-" + side + "-ft";
        if (parts.length == 0 || List.of(parts).contains(name)) {
          rows.add(measured(name, yard(side, side, 3), false, tells, out));
          rows.add(measured(name, yard(side, side, 3), true, tells, out));
        }
      }
      if (!tells) {
        Files.writeString(PAGE, page(rows));
        out.println(PAGE);
      }
    }
  }

  private static Row measured(
      String name, Plan plan, boolean full, boolean tells, PrintStream out) {
    Asked asked = new Asked(tells);
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    if (full) {
      LayoutEngine.lay(plan, asked);
    } else {
      LayoutEngine.first(plan, asked);
    }
    asked.note();
    double millis = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
    Row row = new Row(name, full, millis, asked.asks, asked.longest / 1e6);
    out.print(line(row));
    if (tells) {
      out.println("   " + asked.told);
    }
    return row;
  }

  /** A rectangle in feet, 8 in thick, with some corners cut out of its edge. */
  private static Plan yard(double wide, double high, int notches) {
    List<Point> corners = new ArrayList<>(List.of(at(0, 0), at(wide, 0), at(wide, high)));
    for (int i = notches; i > 0; i--) {
      double x = wide * i / (notches + 1);
      corners.addAll(List.of(at(x + 9, high), at(x + 9, high - 7), at(x, high - 7), at(x, high)));
    }
    corners.add(at(0, high));
    Slab slab = Slab.of("yard", Outline.of(corners)).withThickness(Length.inches(8));
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private static Point at(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private static String page(List<Row> rows) {
    StringBuilder page = new StringBuilder(HEAD);
    long over = rows.stream().filter(r -> r.longest() > LONG).count();
    page.append(
        String.format(
            Locale.ROOT, "Longer than %.0f ms: %d of %d searches.%n%n", LONG, over, rows.size()));
    page.append("| case | effort | whole | questions | longest stretch |\n");
    page.append("|---|---|---:|---:|---:|\n");
    rows.forEach(r -> page.append(line(r)));
    return page.toString();
  }

  private static String line(Row r) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.0f | %d | %.1f |%n",
        r.name(),
        r.full() ? "full" : "first",
        r.millis(),
        r.asks(),
        r.longest());
  }
}
