package org.jointwright.text;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** A language that the program speaks. */
public enum Language {
  /** English. */
  ENGLISH("en", Locale.ENGLISH, true),
  /** Spanish as crews in North America read it: a point before decimals. */
  SPANISH("es", Locale.of("es", "US"), false);

  /** “El” as a name begins large, as a pronoun it has an accent: neither is joined. */
  private static final Pattern SPANISH_ARTICLE = Pattern.compile("\\b([Dd]e|[Aa]) el ");

  private final String code;
  private final Locale locale;
  private final boolean isChecked;

  Language(String code, Locale locale, boolean isChecked) {
    this.code = code;
    this.locale = locale;
    this.isChecked = isChecked;
  }

  /** The language that {@code code}, say {@code es}, stands for. */
  public static Optional<Language> of(String code) {
    return Arrays.stream(values()).filter(l -> l.code.equals(code)).findFirst();
  }

  /**
   * A sentence as it is written once the words that were put into it stand beside their neighbours:
   * in Spanish “de el lado” becomes “del lado”, “a el” becomes “al”.
   */
  String joined(String sentence) {
    return this == SPANISH ? SPANISH_ARTICLE.matcher(sentence).replaceAll("$1l ") : sentence;
  }

  /** Its code in ISO 639-1, {@code en} for example. */
  public String code() {
    return code;
  }

  /** How it writes figures, and by what its words are found. */
  public Locale locale() {
    return locale;
  }

  /** Whether a finisher who speaks it has read its words; until then they are a draft. */
  public boolean isChecked() {
    return isChecked;
  }
}
