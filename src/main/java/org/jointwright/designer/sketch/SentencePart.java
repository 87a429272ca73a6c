package org.jointwright.designer.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jointwright.designer.sketch.Vocabulary.Meaning;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;

/** What a typed sentence is put together of, in the order of typing. */
sealed interface SentencePart {
  /** A figure: a length, or degrees. */
  record Figure(String text) implements SentencePart {
    /** Whether it is a number without a unit, as degrees are, or has their sign. */
    boolean mayBeDegrees() {
      return PLAIN.matcher(text).matches();
    }
  }

  /** A word that is known. */
  record Word(Meaning meaning, String text) implements SentencePart {}

  /** A word that is none of ours; it may become one where it is the last and still being typed. */
  record Strange(String text, boolean isBegun) implements SentencePart {}

  /** A number alone, with or without the sign of degrees. */
  Pattern PLAIN = Pattern.compile("-?\\d+(\\.\\d*)?°?");

  /** Words stand apart, or a comma does: inside a figure it stays, and is refused there. */
  Pattern SPACE = Pattern.compile("\\s+");

  /** The parts of {@code text}. */
  static List<SentencePart> of(String text, Vocabulary vocabulary) {
    List<String> words = spread(text, vocabulary);
    List<SentencePart> parts = new ArrayList<>();
    boolean isOpen = !Character.isWhitespace(text.charAt(text.length() - 1));
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean figureNext = i + 1 < words.size() && Character.isDigit(words.get(i + 1).charAt(0));
      // "6 in" is a length, "in 3'" a bulge.
      Optional<Meaning> meaning =
          isUnit(word) && !figureNext ? Optional.empty() : vocabulary.meaning(word);
      if (meaning.isPresent()) {
        parts.add(new Word(meaning.get(), word));
      } else if (isUnit(word) || !word.chars().allMatch(Character::isLetter)) {
        add(parts, word);
      } else {
        parts.add(strange(word, isOpen && i == words.size() - 1, vocabulary));
      }
    }
    return parts;
  }

  /** A last word that can only become one that is known is taken for it. */
  private static SentencePart strange(String word, boolean isLast, Vocabulary vocabulary) {
    List<Meaning> becomes = isLast ? vocabulary.mayBecome(word) : List.of();
    return becomes.size() == 1
        ? new Word(becomes.getFirst(), word)
        : new Strange(word, !becomes.isEmpty());
  }

  private static void add(List<SentencePart> parts, String word) {
    if (!parts.isEmpty() && parts.getLast() instanceof Figure(String text)) {
      parts.set(parts.size() - 1, new Figure(text + " " + word));
    } else {
      parts.add(new Figure(word));
    }
  }

  /**
   * The words, a known one parted from the figures it is written against: {@code 12'left}. A comma
   * at a word's end stands as a word of its own.
   */
  private static List<String> spread(String text, Vocabulary vocabulary) {
    List<String> words = new ArrayList<>();
    for (String said : SPACE.split(text.strip(), 0)) {
      boolean ends = said.length() > 1 && said.endsWith(",");
      String word = ends ? said.substring(0, said.length() - 1) : said;
      int letters = word.length();
      while (letters > 0 && Character.isLetter(word.charAt(letters - 1))) {
        letters--;
      }
      String tail = word.substring(letters);
      boolean isTail = letters > 0 && letters < word.length();
      if (isTail && vocabulary.meaning(tail).isPresent() && !isUnit(tail)) {
        words.add(word.substring(0, letters));
        words.add(tail);
      } else {
        words.add(word);
      }
      if (ends) {
        words.add(",");
      }
    }
    return words;
  }

  private static boolean isUnit(String word) {
    try {
      return !word.isEmpty()
          && Character.isLetter(word.charAt(0))
          && LengthReader.read("1 " + word, LengthUnit.INCH).inches() > 0;
    } catch (LengthFormatException e) {
      return false;
    }
  }
}
