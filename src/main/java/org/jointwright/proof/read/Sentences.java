package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading.Cut;
import org.jointwright.proof.read.Reading.Depth;
import org.jointwright.proof.read.Reading.Orders;
import org.jointwright.proof.read.Reading.Thicker;

/** Reads the orders to the crew. */
final class Sentences {
  private static final String LENGTH = Phrases.LENGTH;

  /** A full stop ends a sentence; a point in a figure does not. */
  private static final String TO_THE_STOP = "(?:[^.]|\\.(?=[0-9]))+";

  private static final String HOUR = "[0-9.]+";

  private final Phrases phrases;
  private final Figures figures;

  private final String text;
  private final int page;

  Sentences(List<Printed> lines, Phrases phrases, Figures figures) {
    this.phrases = phrases;
    this.figures = figures;
    List<Printed> sentences =
        lines.stream()
            .filter(Blocks::isSentence)
            .sorted(Comparator.comparingInt(Printed::page).thenComparingDouble(Printed::y))
            .toList();
    this.text = text(sentences);
    this.page = sentences.isEmpty() ? 0 : sentences.getFirst().page();
  }

  /** The orders, as one text. */
  private static String text(List<Printed> sentences) {
    return sentences.stream().map(Printed::text).collect(Collectors.joining(" "));
  }

  Orders read() {
    List<Depth> dig = new ArrayList<>();
    List<Depth> base = new ArrayList<>();
    Matcher m = phrases.pattern("order.string", TO_THE_STOP, TO_THE_STOP).matcher(text);
    if (m.find()) {
      depths(m.group(1), new Place(page, Block.ORDERS, "", Part.DEPTH), dig);
      depths(m.group(2), new Place(page, Block.ORDERS, "", Part.BASE), base);
    }
    return new Orders(cuts(), dig, base, thicker());
  }

  private List<Thicker> thicker() {
    List<Thicker> thicker = new ArrayList<>();
    Matcher m =
        phrases.pattern("order.thickened", ".+?", LENGTH, LENGTH, LENGTH, LENGTH).matcher(text);
    while (m.find()) {
      String sides = m.group(1);
      thicker.add(
          new Thicker(
              List.of(sides.split(", ", -1)),
              figures.add(m.group(2), new Place(page, Block.EDGES, sides, Part.THICKNESS)),
              figures.add(m.group(3), new Place(page, Block.EDGES, sides, Part.SLAB)),
              figures.add(m.group(4), new Place(page, Block.EDGES, sides, Part.WIDTH)),
              figures.add(m.group(5), new Place(page, Block.EDGES, sides, Part.DEPTH))));
    }
    return thicker;
  }

  private List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Pattern way :
        List.of(
            sawn("order.saw"),
            sawn("order.early"),
            begun(phrases.source("order.tool", LENGTH, LENGTH)))) {
      Matcher m = way.matcher(text);
      while (m.find()) {
        Place depth = new Place(page, Block.ORDERS, "", Part.DEPTH);
        Place width = new Place(page, Block.ORDERS, "", Part.WIDTH);
        cuts.add(new Cut(figures.fine(m.group(1), depth), figures.fine(m.group(2), width)));
      }
    }
    return cuts;
  }

  private Pattern sawn(String key) {
    return begun(phrases.source(key, LENGTH, LENGTH, HOUR, HOUR));
  }

  /** A phrase may begin a sentence or go on in one. */
  private static Pattern begun(String source) {
    return Pattern.compile(source, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** The depths of "drive, walk 8″, approach 1′-0″": each holds for the names before it. */
  private void depths(String text, Place place, List<Depth> into) {
    Matcher m = Pattern.compile("(?:^|, )(.*?) ?(" + LENGTH + ")(?=, |$)").matcher(text);
    while (m.find()) {
      List<String> names =
          m.group(1).isEmpty() ? List.of() : List.of(m.group(1).strip().split(", ", -1));
      into.add(new Depth(names, figures.add(m.group(2), place)));
    }
  }
}
