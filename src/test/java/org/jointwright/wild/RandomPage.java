package org.jointwright.wild;

import java.util.List;
import java.util.Locale;

/** The page of a run of wild slabs. */
final class RandomPage {
  private static final String HEAD =
      """
      # Wild slabs

      Slabs that nobody would pour, drawn from seeds: steps of a quarter inch, corners that all but touch, necks an inch wide, arcs
      that meet at any angle, curves of hundreds of short chords, openings that nearly touch, tips, teeth, half a foot square and a
      thousand feet across, a third of them turned, a quarter of them up to ten miles from the origin. Made by `mvn -q -Prandom`,
      or of a million slabs by `mvn -q -Pmillion`; `-Drandom="1000 100 20"` names how many are given, held and laid,
      `-Drandom="LENS-31"` looks at one.

      *Given*: joints drawn at random across the slab; the plan is written, read, cut into panels and judged by every rule.
      *Held*: the same with edges against buildings, concrete and streets, posts and their box-outs, filler that is right, too
      short, beside its edge or forgotten, and some of the joints cut short, run past the slab, bent or laid twice. Only M6 at each
      joint and M7 at each edge and object are compared.
      *Laid*: the same slabs without joints, the huge ones left out, laid by the engine with the lesser effort, then looked at in the
      same way, but for the tees, and with the panels measured as they were cut.

      A slab fails where anything throws or a rule crashes; where a plan is refused that geometry finds sound, or read that it does
      not; where the panels do not tile the slab (their areas to 0.01 sq ft, and the coverage validator of JTS); where the panels are
      others than JTS makes of the same lines; where a finding of M1 to M5 or M8 at a panel, of M6 or M7, or the number of tees (S1) is
      not what a second opinion says that is worked out from polygons alone and shares no code with the checks. *Unsure* is
      what the second opinion leaves open: too near a limit, corners that may count as one with others, a panel narrower
      than 2 ft (where the slab itself may be that narrow). Seconds are the processor’s.

      """;

  private RandomPage() {}

  static String of(List<Series> series) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append(
        "| | slabs | refused, in words | panels | findings | failed | mean, s | slowest, s |\n");
    page.append("|---|---:|---:|---:|---:|---:|---:|---:|\n");
    for (Series s : series) {
      add(
          page,
          "| %s | %d | %d | %d | %d | %d | %.4f | %.2f |%n",
          s.how(),
          s.count(),
          s.tally().refusals(),
          s.tally().panels(),
          s.tally().findings(),
          s.failed().size(),
          s.seconds() / Math.max(1, s.count()),
          s.slowest().isEmpty() ? 0 : s.slowest().getFirst().seconds());
    }
    series.forEach(s -> addSeries(page, s));
    return page.toString();
  }

  private static void addSeries(StringBuilder page, Series s) {
    String name = s.how().substring(0, 1).toUpperCase(Locale.ROOT) + s.how().substring(1);
    add(page, "%n## %s%n%n", name);
    add(page, "%d slabs, seeds from 0 on, the kinds in turn.%n%n", s.count());
    page.append("| rule | broken, both say | kept, both say | unsure |\n|---|---:|---:|---:|\n");
    for (String rule : s.tally().rules()) {
      add(
          page,
          "| %s | %d | %d | %d |%n",
          rule,
          s.tally().count(rule, Verdict.BROKEN),
          s.tally().count(rule, Verdict.KEPT),
          s.tally().count(rule, Verdict.UNSURE));
    }
    add(
        page,
        "%nM6 counts joints, M7 edges and objects, S1 slabs, the rest panels. No second opinion on"
            + " %d slabs.%n",
        s.tally().withoutSecond());
    page.append("\n| kind | slabs | failed |\n|---|---:|---:|\n");
    s.kinds().forEach((k, n) -> add(page, "| %s | %d | %d |%n", k, n[0], n[1]));
    add(page, "%nOver 2 s: %d. Slowest, s:", s.longOnes());
    s.slowest().forEach(t -> add(page, " %s %.2f", t.name(), t.seconds()));
    page.append(".\n");
    if (!s.failed().isEmpty()) {
      page.append("\nFailed:\n\n");
      s.failed().stream()
          .limit(60)
          .forEach(f -> add(page, "- %s: %s%n", f.name(), String.join("; ", f.faults())));
    }
  }

  private static void add(StringBuilder page, String format, Object... arguments) {
    page.append(String.format(Locale.ROOT, format, arguments));
  }
}
