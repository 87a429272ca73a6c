package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jointwright.proof.paper.Printed;

/** Reads the tables of a cut sheet row by row: each cell is what stands under its head. */
final class Tables {
  private static final double ALIGNED = 0.3;

  /** A box to tick stands so far to the left of the number, and nothing else does; millimetres. */
  private static final double TICK = 8;

  private static final double SMALL = 3.2;

  private final List<Printed> lines;
  private final Blocks blocks;

  Tables(List<Printed> lines, Blocks blocks) {
    this.lines = lines;
    this.blocks = blocks;
  }

  /**
   * A row of a table.
   *
   * @param page the page of the file, from 0
   * @param number its number
   * @param cells the texts under the heads after the first
   */
  record Row(int page, int number, List<String> cells) {}

  /** The rows of all tables whose heads read so, in the order of their numbers. */
  List<Row> rows(String first, List<String> heads) {
    List<Row> rows = new ArrayList<>();
    for (Printed head : lines) {
      if (blocks.isTableHead(head) && head.text().equals(first)) {
        columns(head, heads).ifPresent(c -> rows.addAll(rows(head, c)));
      }
    }
    rows.sort(Comparator.comparingInt(Row::number));
    return rows;
  }

  /** What is said in the heads of tables beside the names of their columns. */
  List<Printed> remarks() {
    return lines.stream()
        .filter(blocks::isTableHead)
        .flatMap(h -> blocks.beside(h).stream())
        .filter(l -> l.capital() < SMALL)
        .distinct()
        .toList();
  }

  private Optional<List<Printed>> columns(Printed head, List<String> heads) {
    List<Printed> beside = blocks.beside(head);
    List<Printed> columns = new ArrayList<>();
    for (Printed l : beside) {
      if (columns.size() < heads.size() && l.text().equals(heads.get(columns.size()))) {
        columns.add(l);
      } else if (columns.size() < heads.size() && blocks.isTableHead(l)) {
        return Optional.empty();
      }
    }
    return columns.size() == heads.size() ? Optional.of(columns) : Optional.empty();
  }

  private List<Row> rows(Printed head, List<Printed> columns) {
    double left = head.x() - TICK;
    double right = columns.getLast().right() + 0.5;
    // Not from the boxes to tick on: these may stand under the last column of the table beside.
    double low = blocks.below(head, head.x(), right);
    List<Printed> numbers =
        lines.stream()
            .filter(l -> l.page() == head.page() && l.y() > head.y() && l.y() < low)
            .filter(l -> l.isOf("Heavy") && l.text().matches("[0-9]+"))
            .filter(l -> l.x() > left && l.right() < columns.getFirst().x())
            .sorted(Comparator.comparingDouble(Printed::y))
            .toList();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      double top = numbers.get(i).y() - 1;
      double next = i + 1 < numbers.size() ? numbers.get(i + 1).y() - 1 : low;
      List<String> cells = new ArrayList<>();
      for (Printed column : columns) {
        cells.add(cell(column, top, next));
      }
      rows.add(new Row(head.page(), Integer.parseInt(numbers.get(i).text()), cells));
    }
    return rows;
  }

  private String cell(Printed column, double top, double next) {
    return lines.stream()
        .filter(l -> l.page() == column.page() && l.y() > top && l.y() < next)
        .filter(l -> l.isOf("Medium") && l.capital() > SMALL)
        .filter(
            l ->
                Math.abs(l.x() - column.x()) < ALIGNED
                    || Math.abs(l.right() - column.right()) < ALIGNED)
        .sorted(Comparator.comparingDouble(Printed::y))
        .map(Printed::text)
        .collect(Collectors.joining(" "));
  }
}
