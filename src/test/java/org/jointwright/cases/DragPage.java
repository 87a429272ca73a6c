package org.jointwright.cases;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The page of drags, in words and figures. */
final class DragPage {
  private static final String HEAD =
      """
      # How steady layouts are under a hand

      Every corner of every open case, outline and openings, pulled along the edge that leaves it and square to it, 48 steps of
      1/2 in, outwards at every other corner and inwards at the rest. Made by `mvn -q -Pdrags`.

      *Whole corpus*: the pattern of the layout before the drag is fitted to each step, up to the first that it does not fit:
      there more would be broken than before, and another pattern is due whoever lays it. Nothing is searched.

      *Sample*: the first 24 steps of one drag, the one half way through the list, of those cases that are laid quickly. *Kept* is
      what the window shows while a hand drags: the pattern fitted; where it fits no more, the step laid anew with little effort,
      and that pattern from there on. *Anew*: each step laid anew with the same little effort, as without keeping.

      *Why a pattern stops fitting*: counted once, by the steps that were left, on 17 cases of all sorts. In 28 % a panel becomes longer than the
      spacing allows (M1), in 20 % too long for its width (M2), in 45 % it passes the engine’s own limit, mostly of M1, which leaves out the half inch that the
      rules forgive, so that a step or two later the rule is broken; in 7 % a joint misses the corner or box-out that it served. The best pattern has
      the fewest joints that may be, so its panels stand at a limit from the start, and a slab that grows by an inch needs another.

      *Fits*: the share of the steps that needed no search. *Changes*: how often the pattern became another (a joint more or less,
      or one over 6 in from all that were there), and in brackets how often back to one that had been there in the same drag. *Moved*: the share of
      joints that moved more in a step than the corner did, to 1/16 in; *jumped*: by over an inch more, past the next whole inch.
      Both count the joints of a new pattern too.

      """;

  private static final String COLUMNS =
      """
      | | steps | fits | moved | jumped | sampled steps | kept: changes | moved | jumped | anew: changes | moved | jumped |
      |---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|
      """;

  private DragPage() {}

  static String of(List<DragRow> rows) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("## All, and by family\n\n").append(COLUMNS);
    page.append(sum(rows)).append('\n');
    Map<String, DragRow> families = new LinkedHashMap<>();
    for (DragRow r : rows) {
      families.computeIfAbsent(r.of().family(), f -> new DragRow(new OpenCase(f, f))).add(r);
    }
    families.values().forEach(r -> page.append(row(r)).append('\n'));
    page.append("\n## By case\n\n").append(COLUMNS);
    rows.forEach(r -> page.append(row(r)).append('\n'));
    return page.toString();
  }

  /** The row of all cases together. */
  static String sum(List<DragRow> rows) {
    DragRow all = new DragRow(new OpenCase("all", "all"));
    rows.forEach(all::add);
    return row(all);
  }

  static String row(DragRow r) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %s | %s | %s | %s | %s |",
        r.of().name(),
        r.asked(),
        DragTable.share(r.asked() == 0 ? 0 : (double) r.hand().steps() / r.asked()),
        DragTable.share(r.hand().moved()),
        DragTable.share(r.hand().jumped()),
        r.anew().steps() == 0 ? "-" : Integer.toString(r.anew().steps()),
        figures(r.sampled()),
        figures(r.anew()));
  }

  private static String figures(Steadiness s) {
    if (s.steps() == 0) {
      return "- | - | -";
    }
    return String.format(
        Locale.ROOT,
        "%d (%d) | %s | %s",
        s.changes(),
        s.back(),
        DragTable.share(s.moved()),
        DragTable.share(s.jumped()));
  }
}
