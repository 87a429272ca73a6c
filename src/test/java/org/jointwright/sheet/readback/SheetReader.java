package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jointwright.shape.Point;
import org.jointwright.sheet.readback.Reading.Bow;
import org.jointwright.sheet.readback.Reading.BoxOut;
import org.jointwright.sheet.readback.Reading.Figure;
import org.jointwright.sheet.readback.Reading.Row;
import org.jointwright.sheet.readback.Reading.Side;
import org.jointwright.sheet.readback.Reading.Strip;
import org.jointwright.sheet.readback.Reading.Tie;
import org.jointwright.sheet.readback.Reading.Where;

/** Understands the lines of a printed cut sheet by their words, type and places. */
final class SheetReader {
  private static final double COLUMN = 53.9;

  private final List<Printed> lines;

  /** Where the foot begins. */
  private final double foot;

  /** Where the column of lists begins. */
  private final double column;

  private SheetReader(List<Printed> lines) {
    this.lines = lines;
    this.foot = title(lines).y() - 9;
    this.column = count(lines).right() - 56.4;
  }

  /** What the sheet is, at its foot. */
  static Printed title(List<Printed> lines) {
    return lines.stream().filter(l -> l.text().equals("Cut sheet")).findFirst().orElseThrow();
  }

  private static Printed count(List<Printed> lines) {
    return lines.stream()
        .filter(l -> l.text().matches("[0-9]+ of [0-9]+"))
        .findFirst()
        .orElseThrow();
  }

  static Reading read(List<Printed> lines) {
    return new SheetReader(lines).reading();
  }

  private Reading reading() {
    List<Row> rows = new ArrayList<>();
    for (String kind : List.of("cut", "form")) {
      table(kind, List.of("from", "to", "long")).forEach(cells -> rows.add(row(cells)));
    }
    List<Strip> strips = new ArrayList<>();
    for (List<String> cells : table("set", List.of("where", "long", "strip"))) {
      List<String> sizes = Grammar.lengths(cells.get(3));
      strips.add(
          new Strip(
              Integer.parseInt(cells.get(0)),
              cells.get(1),
              Grammar.length(cells.get(2)),
              Grammar.length(sizes.get(0)),
              Grammar.length(sizes.get(1))));
    }
    return new Reading(
        scale(), letters(), sides(), arcs(), bends(), ties(), rows, strips, boxOuts(), figures());
  }

  private static Row row(List<String> cells) {
    String to = cells.get(2);
    double bow = 0;
    Matcher m = Pattern.compile("(.*) bows (left|right) (" + Grammar.LENGTH + ")").matcher(to);
    if (m.matches()) {
      to = m.group(1);
      bow = Grammar.length(m.group(3)) * (m.group(2).equals("left") ? 1 : -1);
    }
    return new Row(
        Integer.parseInt(cells.get(0)),
        Grammar.where(cells.get(1)),
        Grammar.where(to),
        bow,
        Grammar.length(cells.get(3)));
  }

  private double scale() {
    Printed head = lines.stream().filter(l -> l.text().equals("Scale")).findFirst().orElseThrow();
    String text =
        lines.stream()
            .filter(l -> l.page() == head.page() && Math.abs(l.x() - head.x()) < 0.5)
            .filter(l -> l.y() > head.y() + 1)
            .findFirst()
            .orElseThrow()
            .text();
    if (text.startsWith("1:")) {
      return Double.parseDouble(text.substring(2));
    }
    String[] parts = text.split(" = ", -1);
    return Grammar.length(parts[1].endsWith("′") ? parts[1] + "-0″" : parts[1])
        / Grammar.length(parts[0]);
  }

  private Map<String, Point> letters() {
    Map<String, Point> letters = new LinkedHashMap<>();
    for (Printed l : lines) {
      if (l.page() == 0 && l.isBold("Heavy") && l.capital() > 4.5 && l.y() < foot) {
        letters.put(l.text(), new Point(l.middleX(), l.y() - l.capital() / 2));
      }
    }
    return letters;
  }

  private List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    for (Printed l : lines) {
      boolean inColumn = l.x() > column;
      if (l.page() == 0 && l.isBold("Bold") && !inColumn && Grammar.isLength(l.text())) {
        figures.add(
            new Figure(Grammar.length(l.text()), new Point(l.middleX(), l.middleY()), l.text()));
      }
    }
    return figures;
  }

  // Lists ---------------------------------------------------------------------------------------

  private boolean isHead(Printed l) {
    return l.isBold("Heavy") && l.capital() < 4 && !l.text().matches("[0-9]+|N");
  }

  /** The rows of texts under each head that starts so: the head's text first, then its lines. */
  private List<List<Printed>> lists(String title) {
    List<List<Printed>> found = new ArrayList<>();
    for (Printed head : lines) {
      if (isHead(head) && head.text().startsWith(title)) {
        double low = below(head, head.x() - 1, head.x() + COLUMN + 1);
        List<Printed> list = new ArrayList<>(List.of(head));
        lines.stream()
            .filter(l -> l.page() == head.page() && l.y() > head.y() + 2 && l.y() < low)
            .filter(l -> l.x() > head.x() - 1 && l.right() < head.x() + COLUMN + 1.5)
            .sorted(Comparator.comparingDouble(Printed::y).thenComparingDouble(Printed::x))
            .forEach(list::add);
        found.add(list);
      }
    }
    return found;
  }

  /** Where the block under a head ends: at the next head below it in the same column. */
  private double below(Printed head, double left, double right) {
    return lines.stream()
        .filter(l -> l.page() == head.page() && l.y() > head.y() + 1)
        .filter(l -> l.x() >= left && l.x() <= right)
        .filter(l -> isHead(l) || isColumnHead(l) || isOrder(l))
        .mapToDouble(l -> l.y() - 2)
        .min()
        .orElse(foot);
  }

  private static boolean isOrder(Printed l) {
    return l.isBold("Bold") && l.text().contains(" ") && l.text().matches(".*[a-z]{3}.*");
  }

  private static boolean isColumnHead(Printed l) {
    return l.capital() < 3.2 && l.text().matches("cut|form|set|from|to|where|long|strip");
  }

  private static boolean isTableHead(Printed l) {
    return l.capital() < 3.2 && l.text().matches("cut|form|set");
  }

  private List<Tie> ties() {
    List<Tie> ties = new ArrayList<>();
    for (List<Printed> list : lists("Diagonals")) {
      List<String> names = new ArrayList<>();
      double length = 0;
      for (Printed l : list.subList(1, list.size())) {
        if (Grammar.isLength(l.text())) {
          // The figure may stand before or after the names of its row: they share a baseline.
          length = Grammar.length(l.text());
          double y = l.y();
          List<Printed> rowLines =
              list.stream().filter(n -> n.text().contains("–") && n.y() >= y - 0.5).toList();
          double next =
              list.stream()
                  .filter(f -> Grammar.isLength(f.text()) && f.y() > y + 1)
                  .mapToDouble(Printed::y)
                  .min()
                  .orElse(Double.MAX_VALUE);
          for (Printed n : rowLines) {
            if (n.y() < next - 0.5) {
              for (String pair : n.text().replace(" ", "").split(",", -1)) {
                if (!pair.isEmpty()) {
                  names.add(pair);
                  String[] ends = pair.split("–", -1);
                  ties.add(new Tie(ends[0], ends[1], length));
                }
              }
            }
          }
        }
      }
    }
    return ties;
  }

  private Map<String, Side> sides() {
    Map<String, Side> sides = new LinkedHashMap<>();
    String text = joined("Sides");
    String stop = "(?:[A-Z]+ )?" + Grammar.LENGTH;
    Matcher m =
        Pattern.compile(
                "([A-Z]+)–([A-Z]+) ("
                    + Grammar.LENGTH
                    + ")((?:: )"
                    + stop
                    + "(?:, "
                    + stop
                    + ")*)?")
            .matcher(text);
    while (m.find()) {
      Map<String, Double> corners = new LinkedHashMap<>();
      List<Double> marks = new ArrayList<>();
      if (m.group(4) != null) {
        for (String part : m.group(4).substring(2).split(", ", -1)) {
          Matcher s = Pattern.compile("(?:([A-Z]+) )?(" + Grammar.LENGTH + ")").matcher(part);
          if (s.matches() && s.group(1) != null) {
            corners.put(s.group(1), Grammar.length(s.group(2)));
          } else if (s.matches()) {
            marks.add(Grammar.length(s.group(2)));
          }
        }
      }
      sides.put(
          m.group(1) + "–" + m.group(2),
          new Side(m.group(1), m.group(2), Grammar.length(m.group(3)), corners, marks));
    }
    return sides;
  }

  private String joined(String title) {
    return lists(title).stream()
        .flatMap(l -> l.stream().skip(1))
        .map(Printed::text)
        .collect(Collectors.joining(" "));
  }

  private Map<String, Bow> arcs() {
    Map<String, Bow> arcs = new LinkedHashMap<>();
    String length = "(" + Grammar.LENGTH + ")";
    Matcher m =
        Pattern.compile(
                "("
                    + Grammar.SIDE
                    + "): radius "
                    + length
                    + ", chord "
                    + length
                    + ", bows (left|right) "
                    + length)
            .matcher(joined("Arcs"));
    while (m.find()) {
      double bow = Grammar.length(m.group(5)) * (m.group(4).equals("left") ? 1 : -1);
      arcs.put(m.group(1), new Bow(Grammar.length(m.group(2)), Grammar.length(m.group(3)), bow));
    }
    return arcs;
  }

  private List<Reading.Bend> bends() {
    List<Reading.Bend> bends = new ArrayList<>();
    String off = Grammar.LENGTH + " " + Grammar.SIDE + ", (?:left|right) " + Grammar.LENGTH;
    Matcher m = Pattern.compile("(?:corner ([A-Z]+) )?(" + off + ")").matcher(joined("Offsets"));
    while (m.find()) {
      Where.Off where = (Where.Off) Grammar.where(m.group(2));
      bends.add(new Reading.Bend(m.group(1) == null ? "" : m.group(1), where));
    }
    return bends;
  }

  private List<BoxOut> boxOuts() {
    List<BoxOut> found = new ArrayList<>();
    for (List<Printed> list : lists("Box-out ")) {
      Map<String, Double> sizes = new LinkedHashMap<>();
      List<String> words = new ArrayList<>();
      List<Printed> rest = list.subList(1, list.size());
      for (Printed l : rest) {
        if (l.isBold("Bold")) {
          String what =
              rest.stream()
                  .filter(n -> n.capital() < 3.2 && n.y() > l.y() + 3 && n.y() < l.y() + 7)
                  .findFirst()
                  .orElseThrow()
                  .text();
          sizes.put(what, Grammar.length(l.text()));
        } else if (l.capital() > 3.2) {
          words.add(l.text());
        }
      }
      found.add(new BoxOut(number(list.getFirst()), sizes, places(String.join(" ", words))));
    }
    return found;
  }

  private static int number(Printed head) {
    return Integer.parseInt(head.text().substring("Box-out ".length()));
  }

  private static List<Where> places(String text) {
    List<Where> places = new ArrayList<>();
    String off =
        Grammar.LENGTH + " " + Grammar.SIDE + "(?:, (?:left|right) " + Grammar.LENGTH + ")?";
    Matcher m = Pattern.compile("corner [A-Z]+|" + off).matcher(text);
    while (m.find()) {
      places.add(Grammar.where(m.group()));
    }
    return places;
  }

  // Tables --------------------------------------------------------------------------------------

  /** The rows of the tables with such a first head: number and cells. */
  private List<List<String>> table(String first, List<String> heads) {
    List<List<String>> rows = new ArrayList<>();
    for (Printed head : lines) {
      if (isTableHead(head) && head.text().equals(first)) {
        List<Printed> columns = new ArrayList<>();
        for (String h : heads) {
          double from = columns.isEmpty() ? head.x() : columns.getLast().x();
          columns.add(
              lines.stream()
                  .filter(l -> l.page() == head.page() && Math.abs(l.y() - head.y()) < 0.3)
                  .filter(l -> l.text().equals(h) && l.x() > from)
                  .min(Comparator.comparingDouble(Printed::x))
                  .orElseThrow());
        }
        rows.addAll(rows(head, columns));
      }
    }
    rows.sort(Comparator.comparingInt(r -> Integer.parseInt(r.getFirst())));
    return rows;
  }

  private List<List<String>> rows(Printed head, List<Printed> columns) {
    double left = head.x() - 8;
    double right = columns.getLast().right() + 0.5;
    double low = below(head, left, right);
    List<Printed> numbers =
        lines.stream()
            .filter(l -> l.page() == head.page() && l.y() > head.y() && l.y() < low)
            .filter(l -> l.isBold("Heavy") && l.text().matches("[0-9]+"))
            .filter(l -> l.x() > left && l.right() < columns.getFirst().x())
            .sorted(Comparator.comparingDouble(Printed::y))
            .toList();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      double top = numbers.get(i).y() - 1;
      double next = i + 1 < numbers.size() ? numbers.get(i + 1).y() - 1 : low;
      List<String> row = new ArrayList<>(List.of(numbers.get(i).text()));
      for (Printed column : columns) {
        row.add(
            lines.stream()
                .filter(l -> l.page() == head.page() && l.y() > top && l.y() < next)
                .filter(l -> l.isBold("Medium") && l.capital() > 3.2)
                .filter(
                    l ->
                        Math.abs(l.x() - column.x()) < 0.3
                            || Math.abs(l.right() - column.right()) < 0.3)
                .sorted(Comparator.comparingDouble(Printed::y))
                .map(Printed::text)
                .collect(Collectors.joining(" ")));
      }
      rows.add(row);
    }
    return rows;
  }
}
