package org.jointwright.designer.settings;

import org.jointwright.text.Language;

/**
 * What the user has chosen of the window.
 *
 * @param language the language it speaks
 * @param measures the measures of its lengths
 * @param look light or dark
 * @param text how large it is
 */
public record Settings(Language language, Measures measures, Look look, TextSize text) {
  /** What a window is that nobody has chosen anything of. */
  public static final Settings FIRST =
      new Settings(Language.ENGLISH, Measures.PLAN, Look.SYSTEM, TextSize.SYSTEM);

  /** In another language. */
  public Settings with(Language value) {
    return new Settings(value, measures, look, text);
  }

  /** In other measures. */
  public Settings with(Measures value) {
    return new Settings(language, value, look, text);
  }

  /** Looking otherwise. */
  public Settings with(Look value) {
    return new Settings(language, measures, value, text);
  }

  /** Of another size. */
  public Settings with(TextSize value) {
    return new Settings(language, measures, look, value);
  }
}
