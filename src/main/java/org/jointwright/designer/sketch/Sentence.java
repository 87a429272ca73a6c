package org.jointwright.designer.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jointwright.designer.sketch.SentencePart.Figure;
import org.jointwright.designer.sketch.SentencePart.Strange;
import org.jointwright.designer.sketch.SentencePart.Word;
import org.jointwright.designer.sketch.Vocabulary.Meaning;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;

/**
 * Reads what is typed while an edge is drawn: {@code 24'6 left}, {@code 6' down 4' right}, {@code
 * 12' right 30}, {@code 20' out 3'}, {@code close}. Left, right, up and down are those of the
 * paper; with degrees, or with the word turn, left and right turn from the side before. Whatever is
 * left over makes the whole unclear: nothing is placed with part of the words passed over.
 */
public final class Sentence {
  /** A length and the way it goes on the paper. */
  private record Leg(Length length, Meaning way) {
    boolean isLevel() {
      return way == Meaning.LEFT || way == Meaning.RIGHT;
    }

    /** Its length, below zero to the left and down. */
    Length signed() {
      boolean isBack = way == Meaning.LEFT || way == Meaning.DOWN;
      return isBack ? Length.inches(-length.inches()) : length;
    }
  }

  /** What cannot be understood, thrown out of the reading as soon as it is met. */
  private static final class Puzzle extends Exception {
    private static final long serialVersionUID = 1;
    private final transient Said.Unclear said;

    Puzzle(String key, Object... arguments) {
      super(key);
      said = new Said.Unclear(key, List.of(arguments));
    }
  }

  private static final double SQUARE = 90;

  private final List<SentencePart> parts;
  private final LengthUnit bare;
  private final List<Leg> legs = new ArrayList<>();
  private Optional<String> length = Optional.empty();
  private Optional<Said.Turn> turn = Optional.empty();
  private Optional<Length> bulge = Optional.empty();
  private boolean closes;
  private int next;

  private Sentence(List<SentencePart> parts, LengthUnit bare) {
    this.parts = parts;
    this.bare = bare;
  }

  /**
   * What {@code text} says.
   *
   * @param bare the unit of a number that has none
   */
  public static Said read(String text, Vocabulary vocabulary, LengthUnit bare) {
    if (text.isBlank()) {
      return new Said.Silent();
    }
    List<SentencePart> parts = SentencePart.of(text, vocabulary);
    if (parts.size() > 1 && parts.getLast() instanceof Strange(String w, boolean b) && b) {
      return new Said.Unfinished(new Sentence(parts.subList(0, parts.size() - 1), bare).said());
    }
    return new Sentence(parts, bare).said();
  }

  private Said said() {
    try {
      while (next < parts.size()) {
        switch (parts.get(next++)) {
          case Figure(String text) -> figure(text);
          case Word word -> word(word);
          case Strange(String text, boolean isBegun) -> throw strange(text);
        }
      }
      return closes ? close() : side();
    } catch (Puzzle p) {
      return p.said;
    } catch (LengthFormatException e) {
      return new Said.Unclear(e.key(), List.of(e.arguments()));
    }
  }

  private void figure(String text) throws Puzzle {
    if (length.isPresent() || turn.isPresent()) {
      throw new Puzzle("window.unclear.whichWay", length.orElse(text));
    }
    length = Optional.of(text);
  }

  private void word(Word word) throws Puzzle {
    switch (word.meaning()) {
      case LEFT, RIGHT, UP, DOWN -> way(word);
      case TURN -> turn();
      case ON -> turned(new Said.Turn.By(0), word);
      case OUT -> bulge = Optional.of(LengthReader.read(following(), bare));
      case IN -> {
        Length in = LengthReader.read(following(), bare);
        bulge = Optional.of(Length.inches(-in.inches()));
      }
      case CLOSE -> closes = true;
      case DEGREES -> throw strange(word.text());
      case AND -> {}
    }
  }

  /** A way on the paper, with its length before it or behind; or a turn, if degrees follow. */
  private void way(Word word) throws Puzzle {
    boolean isTurn = word.meaning() == Meaning.LEFT || word.meaning() == Meaning.RIGHT;
    if (length.isPresent() && legs.isEmpty() && isTurn && degreesFollow()) {
      turned(new Said.Turn.By(signed(word.meaning(), degrees())), word);
    } else if (length.isPresent() && turn.isEmpty()) {
      legs.add(new Leg(LengthReader.read(length.get(), bare), word.meaning()));
      length = Optional.empty();
    } else if (next < parts.size() && turn.isEmpty() && parts.get(next) instanceof Figure) {
      legs.add(new Leg(LengthReader.read(following(), bare), word.meaning()));
    } else {
      throw new Puzzle("window.unclear.howFar", word.text());
    }
  }

  private void turn() throws Puzzle {
    if (next < parts.size() && parts.get(next) instanceof Word way) {
      boolean isTurn = way.meaning() == Meaning.LEFT || way.meaning() == Meaning.RIGHT;
      if (isTurn) {
        next++;
        double by = next < parts.size() && parts.get(next) instanceof Figure ? degrees() : SQUARE;
        turned(new Said.Turn.By(signed(way.meaning(), by)), way);
        return;
      }
    }
    throw new Puzzle("window.unclear.turn");
  }

  private void turned(Said.Turn value, Word word) throws Puzzle {
    if (turn.isPresent() || !legs.isEmpty()) {
      throw strange(word.text());
    }
    turn = Optional.of(value);
  }

  /** Whether a bare number follows that is no length of its own: {@code 12' right 30}. */
  private boolean degreesFollow() {
    boolean isNumber =
        next < parts.size() && parts.get(next) instanceof Figure f && f.mayBeDegrees();
    boolean isLeg =
        next + 1 < parts.size()
            && parts.get(next + 1) instanceof Word after
            && after.meaning().isOnPaper();
    return isNumber && !isLeg;
  }

  private double degrees() throws Puzzle {
    String figure = following();
    if (next < parts.size()
        && parts.get(next) instanceof Word after
        && after.meaning() == Meaning.DEGREES) {
      next++;
    }
    OptionalDouble degrees = degrees(figure);
    if (degrees.isEmpty()) {
      throw new Puzzle("window.unclear.degrees", figure);
    }
    return degrees.getAsDouble();
  }

  private static OptionalDouble degrees(String figure) {
    try {
      double d = Double.parseDouble(figure.replace("°", "").strip());
      return d >= 0 && d < 180 ? OptionalDouble.of(d) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** The figure that follows; nothing where none does. */
  private String following() {
    if (next < parts.size() && parts.get(next) instanceof Figure(String text)) {
      next++;
      return text;
    }
    return "";
  }

  private Said close() throws Puzzle {
    if (length.isPresent() || turn.isPresent() || !legs.isEmpty()) {
      throw new Puzzle("window.unclear.close");
    }
    return new Said.Close(bulge);
  }

  private Said side() throws Puzzle {
    if (length.isPresent() && !legs.isEmpty()) {
      throw new Puzzle("window.unclear.whichWay", length.get());
    }
    Said.Side side = legs.isEmpty() ? plain() : ofLegs();
    double inches = side.length().inches();
    if (bulge.isPresent() && Math.abs(bulge.get().inches()) > inches / 2) {
      // More than half a circle is no edge that a form is bent to.
      throw new Puzzle("window.unclear.bulge", Length.inches(inches / 2));
    }
    return side;
  }

  private Said.Side plain() throws Puzzle {
    Length read = positive(LengthReader.read(length.orElse(""), bare));
    return new Said.Side(read, turn.orElseGet(Said.Turn.Unsaid::new), bulge);
  }

  private Said.Side ofLegs() throws Puzzle {
    for (Leg leg : legs) {
      positive(leg.length);
    }
    Leg one = legs.getFirst();
    if (legs.size() == 1) {
      return new Said.Side(one.length, new Said.Turn.OnPaper(one.way.degrees()), bulge);
    }
    Leg other = legs.get(1);
    if (legs.size() > 2 || one.isLevel() == other.isLevel()) {
      throw new Puzzle("window.unclear.legs");
    }
    Leg level = one.isLevel() ? one : other;
    Leg plumb = one.isLevel() ? other : one;
    Length slanted = Length.inches(Math.hypot(one.length.inches(), other.length.inches()));
    return new Said.Side(slanted, new Said.Turn.Slanted(level.signed(), plumb.signed()), bulge);
  }

  private static Length positive(Length read) throws Puzzle {
    if (read.inches() <= 0) {
      throw new Puzzle("window.unclear.length", read);
    }
    return read;
  }

  private static Puzzle strange(String text) {
    return new Puzzle("window.unclear.words", text);
  }

  private static double signed(Meaning side, double degrees) {
    return side == Meaning.LEFT ? degrees : -degrees;
  }
}
