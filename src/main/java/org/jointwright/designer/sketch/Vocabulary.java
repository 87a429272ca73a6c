package org.jointwright.designer.sketch;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jointwright.text.Words;

/** The words a typed sentence may hold, in the reader's language. */
public final class Vocabulary {
  /** What a word means. */
  public enum Meaning {
    /** To the left on the paper; with degrees, turned to the left. */
    LEFT("window.said.left"),
    /** To the right on the paper; with degrees, turned to the right. */
    RIGHT("window.said.right"),
    /** Left and right turn from the side before. */
    TURN("window.said.turn"),
    /** Go straight on. */
    ON("window.said.on"),
    /** Up the paper. */
    UP("window.said.up"),
    /** Down the paper. */
    DOWN("window.said.down"),
    /** Bulge away from the slab. */
    OUT("window.said.out"),
    /** Bulge into the slab. */
    IN("window.said.in"),
    /** Back to the first corner. */
    CLOSE("window.said.close"),
    /** Degrees; says nothing by itself. */
    DEGREES("window.said.degrees"),
    /** Joins two parts; says nothing by itself. */
    AND("window.said.and");

    private final String key;

    Meaning(String key) {
      this.key = key;
    }

    /** Whether it is a way on the paper. */
    public boolean isOnPaper() {
      return this == LEFT || this == RIGHT || this == UP || this == DOWN;
    }

    /** The way on the paper, degrees counter-clockwise from the right. */
    double degrees() {
      return switch (this) {
        case UP -> 90;
        case LEFT -> 180;
        case DOWN -> -90;
        default -> 0;
      };
    }
  }

  private final Map<String, Meaning> meanings = new HashMap<>();
  private final Map<Meaning, String> first = new EnumMap<>(Meaning.class);
  private final Locale locale;

  /** The vocabulary of {@code words}; each key lists its words, the usual one first. */
  public Vocabulary(Words words) {
    locale = words.locale();
    for (Meaning m : Meaning.values()) {
      List<String> ways = List.of(words.say(m.key).split("\\s+", 0));
      first.put(m, ways.getFirst());
      ways.forEach(w -> meanings.put(w.toLowerCase(locale), m));
    }
  }

  /** What {@code word} means, if anything. */
  public Optional<Meaning> meaning(String word) {
    return Optional.ofNullable(meanings.get(word.toLowerCase(locale)));
  }

  /** What a word that begins with {@code start} may come to mean, each once. */
  public List<Meaning> mayBecome(String start) {
    String lower = start.toLowerCase(locale);
    return meanings.entrySet().stream()
        .filter(e -> e.getKey().startsWith(lower))
        .map(Map.Entry::getValue)
        .distinct()
        .sorted()
        .toList();
  }

  /** The usual word for a meaning. */
  public String word(Meaning meaning) {
    return Optional.ofNullable(first.get(meaning)).orElse("");
  }
}
