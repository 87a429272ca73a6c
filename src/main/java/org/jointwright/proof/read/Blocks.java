package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jointwright.proof.paper.Printed;

/** Finds the blocks of a cut sheet: which words stand under which head. */
final class Blocks {
  private static final double HEAD = 4;
  private static final double NOTE = 3.2;

  /** Words on one line of writing are no farther apart in height than this; millimetres. */
  private static final double LEVEL = 0.3;

  private static final List<String> TITLES =
      List.of("ties.title", "arcs.title", "bends.title", "sides.title", "tees.title");
  private static final List<String> TABLES = List.of("cut.number", "form.number", "set.number");
  private static final List<String> COLUMNS =
      List.of(
          "cut.number",
          "form.number",
          "set.number",
          "cut.from",
          "cut.to",
          "cut.length",
          "set.where",
          "set.length",
          "set.strip");

  private final List<Printed> lines;
  private final List<String> titles;
  private final Pattern boxOut;
  private final List<String> tables;
  private final List<String> columns;
  private final List<Printed> heads;

  Blocks(List<Printed> lines, Phrases phrases) {
    this.lines = lines;
    this.titles = TITLES.stream().map(phrases::say).toList();
    this.boxOut = phrases.pattern("boxOut.title", "[0-9]+");
    this.tables = TABLES.stream().map(phrases::say).toList();
    this.columns = COLUMNS.stream().map(phrases::say).toList();
    this.heads =
        lines.stream().filter(l -> l.capital() < NOTE && tables.contains(l.text())).toList();
  }

  /**
   * A head and the lines under it, in the order in which they are read.
   *
   * @param right where the block ends, millimetres from the left
   * @param low where it ends, millimetres from the top
   */
  record Found(Printed head, double right, double low, List<Printed> lines) {
    boolean holds(Printed l) {
      return l.page() == head.page()
          && l.x() > head.x() - 1
          && l.right() < right + 1.5
          && l.y() > head.y() - 1
          && l.y() < low;
    }
  }

  /** Everything under the heads that match. */
  List<Found> under(Pattern title) {
    List<Found> found = new ArrayList<>();
    for (Printed head : lines) {
      if (isHead(head) && title.matcher(head.text()).matches()) {
        found.add(under(head));
      }
    }
    return found;
  }

  /** All blocks. */
  List<Found> all() {
    return lines.stream().filter(this::isHead).map(this::under).toList();
  }

  private Found under(Printed head) {
    double right = remark(head).map(Printed::right).orElse(head.right());
    double low = below(head, head.x() - 1, right + 1);
    List<Printed> list =
        lines.stream()
            .filter(l -> l.page() == head.page() && l.y() > head.y() + 2 && l.y() < low)
            .filter(l -> l.x() > head.x() - 1 && l.right() < right + 1.5)
            .sorted(Comparator.comparingDouble(Printed::y).thenComparingDouble(Printed::x))
            .toList();
    return new Found(head, right, low, list);
  }

  /** What is said beside a head, at the right end of its line. */
  private Optional<Printed> remark(Printed head) {
    return lines.stream()
        .filter(l -> l.page() == head.page() && Math.abs(l.y() - head.y()) < LEVEL)
        .filter(l -> l.x() > head.x() && l.capital() < NOTE)
        .min(Comparator.comparingDouble(Printed::x));
  }

  private boolean isHead(Printed l) {
    return l.isOf("Heavy")
        && l.capital() < HEAD
        && (titles.contains(l.text()) || boxOut.matcher(l.text()).matches());
  }

  /** Where what stands under a head ends: at the next head, table or sentence under it. */
  double below(Printed head, double left, double right) {
    return lines.stream()
        .filter(l -> l.page() == head.page() && l.y() > head.y() + 1)
        .filter(l -> l.right() >= left && l.x() <= right)
        .filter(l -> isHead(l) || isOverColumn(l) || isSentence(l))
        .mapToDouble(l -> l.y() - 2)
        .min()
        .orElse(Double.MAX_VALUE);
  }

  /** Whether a line is of the orders to the crew. */
  static boolean isSentence(Printed l) {
    return l.isOf("Bold")
        && l.capital() < HEAD
        && Math.abs(l.angle()) < 0.1
        && !l.text().matches(Phrases.LENGTH)
        && !l.text().matches("[0-9]+");
  }

  /** Whether a line is the head of the numbers of a table. */
  boolean isTableHead(Printed l) {
    return l.capital() < NOTE && tables.contains(l.text());
  }

  /** Whether a line is any head of a column. */
  private boolean isOverColumn(Printed l) {
    return l.capital() < NOTE
        && columns.contains(l.text())
        && heads.stream().anyMatch(h -> h.page() == l.page() && Math.abs(h.y() - l.y()) < LEVEL);
  }

  /** The lines on the same line of writing to the right, in their order. */
  List<Printed> beside(Printed head) {
    return lines.stream()
        .filter(l -> l.page() == head.page() && Math.abs(l.y() - head.y()) < LEVEL)
        .filter(l -> l.x() > head.x())
        .sorted(Comparator.comparingDouble(Printed::x))
        .toList();
  }
}
