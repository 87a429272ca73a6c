package org.jointwright.designer.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.jointwright.designer.sketch.Vocabulary.Meaning;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;

/**
 * Reads what is typed while an edge is drawn: {@code 24'6 left}, {@code 12' right 30}, {@code 20'
 * out 3'}, {@code close}. A sentence is a length, then words, each with the figure it needs.
 */
public final class Sentence {
  /** A word and the text that follows it up to the next. */
  private record Part(Meaning meaning, String figure) {}

  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final double SQUARE = 90;

  private final Vocabulary vocabulary;
  private final LengthUnit bare;
  private final List<Part> parts = new ArrayList<>();
  private String length = "";

  private Sentence(Vocabulary vocabulary, LengthUnit bare) {
    this.vocabulary = vocabulary;
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
    Sentence sentence = new Sentence(vocabulary, bare);
    Optional<Said> unclear = sentence.split(text.strip());
    if (unclear.isPresent()) {
      return unclear.get();
    }
    try {
      return sentence.said();
    } catch (LengthFormatException e) {
      return new Said.Unclear(e.key(), List.of(e.arguments()));
    }
  }

  private Optional<Said> split(String text) {
    List<String> words = spread(text);
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean figureNext = i + 1 < words.size() && Character.isDigit(words.get(i + 1).charAt(0));
      // "6 in" is a length, "in 3'" a bulge.
      Optional<Meaning> meaning =
          isUnit(word) && !figureNext ? Optional.empty() : vocabulary.meaning(word);
      if (meaning.isPresent()) {
        if (meaning.get() != Meaning.DEGREES) {
          parts.add(new Part(meaning.get(), ""));
        }
      } else if (i == words.size() - 1 && !length.isEmpty() && isStartOfWord(word)) {
        // The word is still being typed: what stands before it is understood already.
        return Optional.empty();
      } else {
        add(word);
      }
    }
    return Optional.empty();
  }

  private boolean isStartOfWord(String word) {
    return word.chars().allMatch(Character::isLetter) && vocabulary.mayBecome(word);
  }

  private void add(String word) {
    if (parts.isEmpty()) {
      length = length.isEmpty() ? word : length + " " + word;
    } else {
      Part last = parts.removeLast();
      String figure = last.figure.isEmpty() ? word : last.figure + " " + word;
      parts.add(new Part(last.meaning, figure));
    }
  }

  /** The words, a known one parted from the figures it is written against: {@code 12'left}. */
  private List<String> spread(String text) {
    List<String> words = new ArrayList<>();
    for (String word : SPACE.split(text, 0)) {
      int letters = word.length();
      while (letters > 0 && Character.isLetter(word.charAt(letters - 1))) {
        letters--;
      }
      boolean isTail = letters > 0 && letters < word.length();
      if (isTail
          && vocabulary.meaning(word.substring(letters)).isPresent()
          && !isUnit(word.substring(letters))) {
        words.add(word.substring(0, letters));
        words.add(word.substring(letters));
      } else {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean isUnit(String word) {
    for (LengthUnit unit : LengthUnit.values()) {
      if (unit.symbol().equalsIgnoreCase(word)) {
        return true;
      }
    }
    return false;
  }

  private Said said() {
    Said.Turn turn = new Said.Turn.Unsaid();
    Optional<Length> bulge = Optional.empty();
    boolean closes = false;
    for (Part part : parts) {
      switch (part.meaning) {
        case LEFT, RIGHT -> {
          OptionalDouble degrees = degrees(part.figure);
          if (degrees.isEmpty()) {
            return new Said.Unclear("window.unclear.degrees", List.of(part.figure));
          }
          turn = new Said.Turn.By(signed(part.meaning, degrees.getAsDouble()));
        }
        case ON -> turn = new Said.Turn.By(0);
        case UP -> turn = new Said.Turn.OnPaper(SQUARE);
        case DOWN -> turn = new Said.Turn.OnPaper(-SQUARE);
        case OUT -> bulge = Optional.of(LengthReader.read(part.figure, bare));
        case IN -> {
          Length in = LengthReader.read(part.figure, bare);
          bulge = Optional.of(Length.inches(-in.inches()));
        }
        case CLOSE -> closes = true;
        case DEGREES -> {}
      }
    }
    return closes ? new Said.Close(bulge) : side(turn, bulge);
  }

  private Said side(Said.Turn turn, Optional<Length> bulge) {
    Length read = LengthReader.read(length, bare);
    if (read.inches() <= 0) {
      return new Said.Unclear("window.unclear.length", List.of(length));
    }
    if (bulge.isPresent() && Math.abs(bulge.get().inches()) > read.inches() / 2) {
      // More than half a circle is no edge that a form is bent to.
      return new Said.Unclear("window.unclear.bulge", List.of(Length.inches(read.inches() / 2)));
    }
    return new Said.Side(read, turn, bulge);
  }

  private static double signed(Meaning side, double degrees) {
    return side == Meaning.LEFT ? degrees : -degrees;
  }

  private static OptionalDouble degrees(String figure) {
    if (figure.isEmpty()) {
      return OptionalDouble.of(SQUARE);
    }
    try {
      double d = Double.parseDouble(figure.replace("°", "").strip());
      return d >= 0 && d < 180 ? OptionalDouble.of(d) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }
}
