package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading.Bend;
import org.jointwright.proof.read.Reading.Bow;
import org.jointwright.proof.read.Reading.Side;
import org.jointwright.proof.read.Reading.Tie;

/** Reads the lists of a cut sheet: diagonals, arcs, offsets and sides. */
final class Lists {
  private static final String LENGTH = Phrases.LENGTH;
  private static final String SIDE = Phrases.SIDE;

  private final Blocks blocks;
  private final Phrases phrases;
  private final Wheres wheres;
  private final Figures figures;

  Lists(Blocks blocks, Phrases phrases, Wheres wheres, Figures figures) {
    this.blocks = blocks;
    this.phrases = phrases;
    this.wheres = wheres;
    this.figures = figures;
  }

  private List<Blocks.Found> lists(String title) {
    return blocks.under(Pattern.compile(Pattern.quote(phrases.say(title))));
  }

  /** The words of a list as one text. */
  private static String joined(Blocks.Found list) {
    return list.lines().stream().map(Printed::text).collect(Collectors.joining(" "));
  }

  /** The diagonals: of each row the pairs of letters, then the length of them all. */
  List<Tie> ties() {
    List<Tie> ties = new ArrayList<>();
    for (Blocks.Found list : lists("ties.title")) {
      List<Printed> lengths = list.lines().stream().filter(l -> l.text().matches(LENGTH)).toList();
      for (int i = 0; i < lengths.size(); i++) {
        double top = lengths.get(i).y() - 0.5;
        double low = i + 1 < lengths.size() ? lengths.get(i + 1).y() - 0.5 : Double.MAX_VALUE;
        String names =
            list.lines().stream()
                .filter(l -> l.y() >= top && l.y() < low && l.text().contains("–"))
                .map(Printed::text)
                .collect(Collectors.joining(" "));
        Place place = new Place(list.head().page(), Block.TIES, names, Part.LENGTH);
        Figure length = figures.add(lengths.get(i).text(), place);
        Matcher m = Pattern.compile("([A-Z]+)–([A-Z]+)").matcher(names);
        while (m.find()) {
          ties.add(new Tie(m.group(1), m.group(2), length));
        }
      }
    }
    return ties;
  }

  Map<String, Bow> arcs() {
    Map<String, Bow> arcs = new LinkedHashMap<>();
    String bow = "(?:" + phrases.source("arcs.left", LENGTH);
    bow += "|" + phrases.source("arcs.right", LENGTH) + ")";
    Pattern row = phrases.pattern("arcs.row", SIDE, LENGTH, LENGTH, bow);
    for (Blocks.Found list : lists("arcs.title")) {
      Matcher m = row.matcher(joined(list));
      while (m.find()) {
        String side = m.group(1);
        boolean left = m.group(5) != null;
        Figure radius = figures.fine(m.group(2), at(list, Block.ARCS, side, Part.RADIUS));
        Figure chord = figures.fine(m.group(3), at(list, Block.ARCS, side, Part.CHORD));
        String off = left ? m.group(5) : m.group(6);
        Figure bows = figures.fine(off, at(list, Block.ARCS, side, Part.BOW));
        arcs.put(side, new Bow(radius, chord, bows, left ? 1 : -1));
      }
    }
    return arcs;
  }

  private static Place at(Blocks.Found list, Block block, String row, Part part) {
    return new Place(list.head().page(), block, row, part);
  }

  /** Corners told from a string, and bends of straight sides. */
  List<Bend> bends() {
    List<Bend> bends = new ArrayList<>();
    String off = "(?:" + phrases.source("at.left", LENGTH, SIDE, LENGTH);
    off += "|" + phrases.source("at.right", LENGTH, SIDE, LENGTH) + ")";
    String corner = phrases.source("bends.corner", "[A-Z]+", "");
    Pattern row = Pattern.compile("(?:" + corner + ")?(" + off + ")");
    for (Blocks.Found list : lists("bends.title")) {
      Matcher m = row.matcher(joined(list));
      while (m.find()) {
        Optional<String> letter = Optional.ofNullable(m.group(1));
        // A corner is told to the step of the tape, a bend of a side more finely.
        Place place = at(list, Block.OFFSETS, letter.orElse(""), Part.OFF);
        wheres
            .off(m.group(3), place, letter.isEmpty())
            .ifPresent(o -> bends.add(new Bend(letter, o)));
      }
    }
    return bends;
  }

  /** Where others meet a joint, by its number. */
  Map<Integer, List<Figure>> tees() {
    Map<Integer, List<Figure>> tees = new TreeMap<>();
    String marks = LENGTH + "(?:, " + LENGTH + ")*";
    Pattern row = phrases.pattern("tees.row", "[0-9]+", marks);
    for (Blocks.Found list : lists("tees.title")) {
      Matcher m = row.matcher(joined(list));
      while (m.find()) {
        Place place = at(list, Block.TEES, m.group(1), Part.MARK);
        List<Figure> at = tees.computeIfAbsent(Integer.valueOf(m.group(1)), n -> new ArrayList<>());
        Matcher mark = Pattern.compile(LENGTH).matcher(m.group(2));
        while (mark.find()) {
          at.add(figures.add(mark.group(), place));
        }
      }
    }
    return tees;
  }

  Map<String, Side> sides() {
    Map<String, Side> sides = new LinkedHashMap<>();
    String stop = "(?:[A-Z]+ )?" + LENGTH;
    Pattern row =
        Pattern.compile("([A-Z]+)–([A-Z]+) (" + LENGTH + ")(: " + stop + "(?:, " + stop + ")*)?");
    for (Blocks.Found list : lists("sides.title")) {
      Matcher m = row.matcher(joined(list));
      while (m.find()) {
        String name = m.group(1) + "–" + m.group(2);
        Figure length = figures.add(m.group(3), at(list, Block.SIDES, name, Part.LENGTH));
        Side side =
            new Side(m.group(1), m.group(2), length, new LinkedHashMap<>(), new ArrayList<>());
        if (m.group(4) != null) {
          stops(m.group(4).substring(2), at(list, Block.SIDES, name, Part.MARK), side);
        }
        sides.put(name, side);
      }
    }
    return sides;
  }

  private void stops(String text, Place place, Side side) {
    Matcher m = Pattern.compile("(?:([A-Z]+) )?(" + LENGTH + ")").matcher(text);
    while (m.find()) {
      Figure along = figures.add(m.group(2), place);
      if (m.group(1) == null) {
        side.marks().add(along);
      } else {
        side.corners().put(m.group(1), along);
      }
    }
  }
}
