package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading.Row;
import org.jointwright.proof.read.Reading.Strip;
import org.jointwright.proof.read.Reading.Way;

/** Reads the rows of the tables: joints to cut and to form, filler to set. */
final class Joints {
  private static final List<String> AGAINST = List.of("BUILDING", "CONCRETE", "STREET", "ASPHALT");

  private final Tables tables;
  private final Phrases phrases;
  private final Wheres wheres;
  private final Figures figures;

  Joints(Tables tables, Phrases phrases, Wheres wheres, Figures figures) {
    this.tables = tables;
    this.phrases = phrases;
    this.wheres = wheres;
    this.figures = figures;
  }

  List<Row> rows() {
    List<String> heads =
        List.of(phrases.say("cut.from"), phrases.say("cut.to"), phrases.say("cut.length"));
    List<Row> rows = new ArrayList<>();
    for (Tables.Row row : tables.rows(phrases.say("cut.number"), heads)) {
      row(row, Block.CUT).ifPresent(rows::add);
    }
    for (Tables.Row row : tables.rows(phrases.say("form.number"), heads)) {
      row(row, Block.FORM).ifPresent(rows::add);
    }
    return rows;
  }

  private static Place place(Tables.Row row, Block block, Part part) {
    return new Place(row.page(), block, String.valueOf(row.number()), part);
  }

  private Optional<Row> row(Tables.Row row, Block block) {
    String to = row.cells().get(1);
    int sign = 1;
    Optional<Figure> bow = Optional.empty();
    for (String key : List.of("bow.left", "bow.right")) {
      Matcher m = Pattern.compile("(.*) " + phrases.source(key, Phrases.LENGTH)).matcher(to);
      if (m.matches()) {
        to = m.group(1);
        sign = key.equals("bow.left") ? 1 : -1;
        bow = Optional.of(figures.add(m.group(2), place(row, block, Part.BOW)));
      }
    }
    Optional<Where> from = where(row.cells().get(0), place(row, block, Part.FROM));
    Optional<Where> end = where(to, place(row, block, Part.TO));
    if (from.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    Figure length = figures.add(row.cells().get(2), place(row, block, Part.LENGTH));
    return Optional.of(new Row(row.number(), block, from.get(), end.get(), bow, sign, length));
  }

  private Optional<Where> where(String text, Place place) {
    return figures.riddled(wheres.of(text, place), place, text);
  }

  /** The sizes that stand over tables of cuts. */
  List<Reading.Cut> sizes() {
    Pattern size = phrases.pattern("cut.size", Phrases.LENGTH, Phrases.LENGTH);
    List<Reading.Cut> sizes = new ArrayList<>();
    for (Printed l : tables.remarks()) {
      Matcher m = size.matcher(l.text());
      if (m.matches()) {
        Place place = new Place(l.page(), Block.CUT, "", Part.DEPTH);
        Figure width = figures.fine(m.group(1), place);
        sizes.add(new Reading.Cut(figures.fine(m.group(2), place), width));
      }
    }
    return sizes;
  }

  List<Strip> strips() {
    List<String> heads =
        List.of(phrases.say("set.where"), phrases.say("set.length"), phrases.say("set.strip"));
    Pattern size = phrases.pattern("set.strip.size", Phrases.LENGTH, Phrases.LENGTH);
    List<Strip> strips = new ArrayList<>();
    for (Tables.Row row : tables.rows(phrases.say("set.number"), heads)) {
      Matcher m = size.matcher(row.cells().get(2));
      Place at = place(row, Block.SET, Part.WHERE);
      Optional<Way> way = way(row.cells().get(0), at);
      figures.riddled(way, at, row.cells().get(0));
      if (way.isEmpty() || !m.matches()) {
        figures.riddle(place(row, Block.SET, Part.WIDTH), row.cells().get(2));
        continue;
      }
      strips.add(
          new Strip(
              row.number(),
              way.get(),
              figures.add(row.cells().get(1), place(row, Block.SET, Part.LENGTH)),
              figures.fine(m.group(1), place(row, Block.SET, Part.WIDTH)),
              figures.add(m.group(2), place(row, Block.SET, Part.DEPTH))));
    }
    return strips;
  }

  private Optional<Way> way(String text, Place place) {
    if (phrases.pattern("set.boxOut", ".*").matcher(text).matches()) {
      return Optional.of(new Way.Round());
    }
    String where = text;
    for (String against : AGAINST) {
      String word = " " + phrases.say("against." + against);
      where = where.endsWith(word) ? where.substring(0, where.length() - word.length()) : where;
    }
    if (where.matches("[A-Z]+(–[A-Z]+)+")) {
      return Optional.of(new Way.Along(List.of(where.split("–", -1))));
    }
    Pattern between = phrases.pattern("set.between", ".*?", ".*");
    Matcher m = between.matcher(where);
    if (!m.matches()) {
      return Optional.empty();
    }
    Optional<Where> from = wheres.of(m.group(1), place);
    Optional<Where> to = wheres.of(m.group(2), place);
    return from.isEmpty() || to.isEmpty()
        ? Optional.empty()
        : Optional.of(new Way.Between(from.get(), to.get()));
  }
}
