package org.jointwright.cases;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The page of speed.
 *
 * @param small the house-size cases
 * @param large the larger ones, and invented yards
 * @param held what layouts of the larger ones take while they are kept
 */
record SpeedPage(
    List<String> small,
    List<String> large,
    Map<String, Timed> refit,
    Map<String, Timed> first,
    Map<String, Timed> full,
    Map<String, Timed> bare,
    Map<String, SpeedTable.Held> held) {
  private static final double FRAME = 16;
  private static final double YARD = 1000;
  private static final double HUGE = 5000;
  private static final double GROWTH = 1.2;
  private static final double TIMES_SMALL = 10;
  private static final double TIMES_HUGE = 5;
  private static final String HEAD =
      """
      # How quick the engine is

      Made by `mvn -q -Pbench` with JMH, one case after another in one warm process, as in a window; it takes six minutes or more.
      Milliseconds of processor time of the thread that does the work, so that what else the machine did counts little; "by the clock" is what
      JMH saw pass. p95 is what 95 of 100 stay under. "Refit" fits the pattern that is there after a corner moved by half an inch, each corner
      of the outlines in turn; "first" is what shows at once when no pattern fits; "full" is the layout that stays. "Bare" is the geometry
      library alone, noding the finished lines and making polygons of them, in the same run: the floor below which no layout can be drawn.

      """;

  String text() {
    StringBuilder page = new StringBuilder(HEAD);
    page.append(machine()).append("\n## Targets\n\n| target | measured | met |\n|---|---|---|\n");
    targets().forEach(page::append);
    page.append("\n## House size, up to 40 panels\n\n").append(head());
    small.forEach(c -> page.append(row(c)));
    page.append("\n## Larger\n\n").append(head());
    large.forEach(c -> page.append(row(c)));
    page.append("\n## Memory\n\n");
    page.append(
        "| case | panels | kept beside the plan, bytes a panel | taken by a refit, bytes a panel"
            + " |\n");
    page.append("|---|---:|---:|---:|\n");
    large.forEach(c -> page.append(memory(c)));
    return page.toString();
  }

  private static String machine() {
    Runtime runtime = Runtime.getRuntime();
    var system =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return say(
        "Machine: %d cores (%s), %.0f GiB of memory, %s, JDK %s (%s), serial collector. It was"
            + " shared with other work: compare ratios.\n",
        runtime.availableProcessors(),
        System.getProperty("os.arch"),
        system.getTotalMemorySize() / Math.pow(2, 30),
        System.getProperty("os.name"),
        Runtime.version().feature(),
        System.getProperty("java.vm.name"));
  }

  private List<String> targets() {
    List<String> rows = new ArrayList<>();
    String slowest = small.getFirst();
    long within = 0;
    long byClock = 0;
    for (String c : small) {
      slowest = refit.get(c).most() > refit.get(slowest).most() ? c : slowest;
      within += refit.get(c).most() <= FRAME ? 1 : 0;
      byClock += refit.get(c).clock() <= FRAME ? 1 : 0;
    }
    rows.add(
        target(
            say("every house-size case refitted within %.0f ms at p95", FRAME),
            say(
                "%d of %d, by the clock %d; slowest %s %s ms",
                within, small.size(), byClock, slowest, ms(refit.get(slowest).most())),
            within == small.size()));
    double yard = full.get(SpeedTable.YARD).median();
    rows.add(
        target(
            "a yard of 300 x 200 ft with openings laid within 1 s",
            ms(yard) + " ms",
            yard <= YARD));
    List<Double> ratios = Timed.ratios(only(refit, small), bare);
    long over = ratios.stream().filter(r -> r > TIMES_SMALL).count();
    rows.add(
        target(
            say("a refit at house size at most %.0f times bare", TIMES_SMALL),
            say(
                "median %.1f, most %.1f, %d of %d over",
                ratios.get(ratios.size() / 2), ratios.getLast(), over, ratios.size()),
            ratios.getLast() <= TIMES_SMALL));
    String huge = SpeedTable.GROWING.getLast();
    if (full.containsKey(huge)) {
      for (var e :
          Map.of("full", full, "refit", refit).entrySet().stream()
              .sorted(Map.Entry.comparingByKey())
              .toList()) {
        Timed t = e.getValue().get(huge);
        double growth = growth(e.getValue());
        rows.add(
            target(
                say("10,000 panels within 5 s, %s", e.getKey()),
                ms(t.median()) + " ms",
                t.median() <= HUGE));
        rows.add(
            target(
                say("from 100 to 10,000 panels no faster than n^%.1f, %s", GROWTH, e.getKey()),
                say("n^%.2f", growth),
                growth <= GROWTH));
      }
      double times = refit.get(huge).median() / bare.get(huge).median();
      rows.add(
          target(
              say("a refit at 10,000 panels at most %.0f times bare", TIMES_HUGE),
              say("%.1f", times),
              times <= TIMES_HUGE));
    }
    return rows;
  }

  private static Map<String, Timed> only(Map<String, Timed> all, List<String> of) {
    Map<String, Timed> found = new java.util.TreeMap<>(all);
    found.keySet().retainAll(of);
    return found;
  }

  private double growth(Map<String, Timed> timed) {
    String a = SpeedTable.GROWING.getFirst();
    String b = SpeedTable.GROWING.getLast();
    double n = (double) held.get(b).panels() / held.get(a).panels();
    return Math.log(timed.get(b).median() / timed.get(a).median()) / Math.log(n);
  }

  private static String target(String target, String measured, boolean met) {
    return say("| %s | %s | %s |\n", target, measured, met ? "yes" : "**no**");
  }

  private static String head() {
    return "| case | refit | p95 | p95 by the clock | first | full | bare | refit/bare |\n"
        + "|---|---:|---:|---:|---:|---:|---:|---:|\n";
  }

  private String row(String c) {
    double times = refit.get(c).median() / bare.get(c).median();
    return say(
        "| %s | %s | %s | %s | %s | %s | %s | %.1f |\n",
        c,
        ms(refit.get(c).median()),
        ms(refit.get(c).most()),
        ms(refit.get(c).clock()),
        ms(first.get(c).median()),
        ms(full.get(c).median()),
        ms(bare.get(c).median()),
        times);
  }

  private String memory(String c) {
    SpeedTable.Held h = held.get(c);
    return say(
        "| %s | %d | %.0f | %.0f |\n",
        c, h.panels(), h.bytes() / h.panels(), refit.get(c).bytes() / h.panels());
  }

  private static String ms(double ms) {
    return ms < 10 ? say("%.2f", ms) : say("%.0f", ms);
  }

  private static String say(String format, Object... of) {
    return String.format(Locale.ROOT, format, of);
  }
}
