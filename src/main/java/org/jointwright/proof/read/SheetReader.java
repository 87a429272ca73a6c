package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jointwright.measure.UnitSystem;
import org.jointwright.proof.paper.Printed;
import org.jointwright.shape.Point;
import org.jointwright.text.Language;

/** Understands a printed cut sheet: its words, their type, and which stand in one line or row. */
public final class SheetReader {
  private static final List<String> OTHERS = List.of("owner.title", "forms.title", "order.title");

  private static final double LETTER = 4.5;
  private static final double TITLE = 5.5;

  /** How high the title’s capitals are on letter paper, millimetres. */
  private static final double TITLE_CAPITAL = 6;

  private static final double TABLE = 3.2;
  private static final double FOOT = 12;

  /** The rule over the foot stands so far above the sheet's title; millimetres. */
  private static final double OVER_TITLE = 10;

  private final Phrases phrases;
  private final Language language;
  private final Figures figures;
  private final UnitSystem units;
  private final List<Printed> lines;
  private final List<Printed> foot;
  private final double enlarged;
  private final Blocks blocks;

  private SheetReader(Language language, List<Printed> lines, List<Printed> foot, double enlarged) {
    this.phrases = new Phrases(language);
    this.language = language;
    this.lines = lines;
    this.foot = foot;
    this.enlarged = enlarged;
    boolean metric = lines.stream().noneMatch(l -> l.text().contains("″"));
    this.units = metric ? UnitSystem.METRIC : UnitSystem.FEET_INCHES;
    this.figures = new Figures(units);
    this.blocks = new Blocks(lines, phrases);
  }

  /** What the pages of a file say that are a cut sheet of ours; empty where none is. */
  public static Optional<Reading> read(List<Printed> all) {
    for (Language language : Language.values()) {
      Map<Integer, Double> feet = new LinkedHashMap<>();
      List<Printed> titles = titled(all, new Phrases(language).say("cut.title")).toList();
      // On large paper all type is larger by as much as the title is.
      double enlarged = titles.isEmpty() ? 1 : titles.getFirst().capital() / TITLE_CAPITAL;
      titles.forEach(l -> feet.put(l.page(), l.y() / enlarged - OVER_TITLE));
      if (!feet.isEmpty()) {
        List<Printed> lines = new ArrayList<>();
        List<Printed> foot = new ArrayList<>();
        for (Printed printed : all) {
          Double low = feet.get(printed.page());
          if (low != null) {
            Printed l = printed.smaller(enlarged);
            (l.y() > low ? foot : lines).add(l);
          }
        }
        return Optional.of(new SheetReader(language, lines, foot, enlarged).reading());
      }
    }
    return Optional.empty();
  }

  private static Stream<Printed> titled(List<Printed> all, String title) {
    return all.stream()
        .filter(l -> l.isOf("Heavy") && l.capital() > TITLE && l.text().equals(title));
  }

  /** The titles of the sheets of ours that are among the pages and are no cut sheets. */
  public static List<String> others(List<Printed> all) {
    return Stream.of(Language.values())
        .map(Phrases::new)
        .flatMap(p -> OTHERS.stream().map(p::say))
        .filter(title -> titled(all, title).findAny().isPresent())
        .distinct()
        .toList();
  }

  private Reading reading() {
    Wheres wheres = new Wheres(phrases, figures);
    Lists lists = new Lists(blocks, phrases, wheres, figures);
    Joints joints = new Joints(new Tables(lines, blocks), phrases, wheres, figures);
    Sentences sentences = new Sentences(lines, phrases, figures);
    return new Reading(
        language,
        units,
        scale(),
        letters(),
        lists.sides(),
        lists.arcs(),
        lists.bends(),
        lists.ties(),
        joints.rows(),
        joints.strips(),
        new BoxOuts(blocks, phrases, wheres, figures).read(),
        marks(),
        slabs(),
        sentences.read(),
        lists.tees(),
        joints.sizes(),
        widths(),
        bar(),
        figures.all(),
        figures.riddles());
  }

  /** The scale in the foot, which is the same on every page. */
  private double scale() {
    String head = phrases.say("foot.scale");
    List<Printed> scales = new ArrayList<>();
    for (Printed label : foot) {
      if (label.text().equals(head)) {
        foot.stream()
            .filter(l -> l.page() == label.page() && Math.abs(l.x() - label.x()) < 0.5)
            .filter(l -> l.y() > label.y() + 1)
            .findFirst()
            .ifPresent(scales::add);
      }
    }
    double scale = 1;
    for (int i = 0; i < scales.size(); i++) {
      Printed l = scales.get(i);
      Place place = new Place(l.page(), Block.FOOT, "", Part.SCALE);
      if (i == 0) {
        scale = scale(l.text(), place);
      } else if (!l.text().equals(scales.getFirst().text())) {
        figures.riddle(place, l.text());
      }
    }
    return scale;
  }

  private double scale(String text, Place place) {
    if (text.matches("1:[0-9]+")) {
      return Double.parseDouble(text.substring(2));
    }
    Matcher m = Pattern.compile("(.*) = (.*?)(′?)").matcher(text);
    if (!m.matches()) {
      figures.riddle(place, text);
      return 1;
    }
    Figure real = figures.exact(m.group(2) + (m.group(3).isEmpty() ? "" : "′-0″"), place);
    Figure paper = figures.exact(m.group(1), place);
    // Architects draw so much for a foot, engineers one inch for tens of feet (from memory).
    boolean forOneFoot = real.inches() == FOOT && paper.inches() <= 1;
    boolean inchForTens = paper.inches() == 1 && real.inches() % (10 * FOOT) == 0;
    if (!forOneFoot && !inchForTens) {
      figures.riddle(place, text);
    }
    return real.inches() / paper.inches();
  }

  /** The widths of filler in the legend. */
  private List<Figure> widths() {
    String lengths = Phrases.LENGTH + "(?:, " + Phrases.LENGTH + ")*";
    Pattern line =
        phrases.pattern("legend.wide", Pattern.quote(phrases.say("legend.isolation")), lengths);
    List<Figure> widths = new ArrayList<>();
    for (Printed l : lines) {
      Matcher m = line.matcher(l.text());
      if (l.capital() < TABLE && m.matches()) {
        Place place = new Place(l.page(), Block.PLAN, "", Part.WIDTH);
        Matcher width = Pattern.compile(Phrases.LENGTH).matcher(m.group(2));
        while (width.find()) {
          widths.add(figures.fine(width.group(), place));
        }
      }
    }
    return widths;
  }

  /** The figures over a scale bar, from its nought on. */
  private List<Figure> bar() {
    List<Figure> bar = new ArrayList<>();
    for (Printed zero : lines) {
      if (zero.text().equals("0") && zero.capital() < TABLE) {
        Place place = new Place(zero.page(), Block.PLAN, "", Part.SCALE);
        for (Printed l : blocks.beside(zero)) {
          boolean feet = l.text().matches("[0-9]+′");
          if (l.capital() < TABLE && (feet || l.text().matches("[0-9.]+ m|" + Phrases.LENGTH))) {
            bar.add(figures.exact(feet ? l.text() + "-0″" : l.text(), place));
          }
        }
      }
    }
    return bar;
  }

  private Map<String, Point> letters() {
    Map<String, Point> letters = new LinkedHashMap<>();
    for (Printed l : lines) {
      if (l.isOf("Heavy") && l.capital() > LETTER && l.text().matches("[A-Z]+")) {
        Point at = new Point(l.middleX(), l.y() - l.capital() / 2);
        letters.putIfAbsent(l.text(), at.times(enlarged));
      }
    }
    return letters;
  }

  /** Figures that stand alone on the plan: in no block beside it. */
  private List<Figure> marks() {
    List<Blocks.Found> all = blocks.all();
    List<Figure> marks = new ArrayList<>();
    for (Printed l : lines) {
      if (l.isOf("Bold")
          && l.capital() > TABLE
          && l.text().matches(Phrases.LENGTH)
          && all.stream().noneMatch(b -> b.holds(l))) {
        Place place = new Place(l.page(), Block.PLAN, "", Part.MARK);
        marks.add(figures.add(l.text(), place));
      }
    }
    return marks;
  }

  private List<Reading.Slab> slabs() {
    List<Reading.Slab> slabs = new ArrayList<>();
    Pattern named = Pattern.compile("(?:(.*) )?(" + Phrases.LENGTH + ")");
    for (Printed l : lines) {
      Matcher m = named.matcher(l.text());
      if (l.isOf("Semibold") && m.matches()) {
        String name = m.group(1) == null ? "" : m.group(1).strip();
        Place place = new Place(l.page(), Block.PLAN, name, Part.THICKNESS);
        slabs.add(new Reading.Slab(name, figures.add(m.group(2), place)));
      }
    }
    return slabs;
  }
}
