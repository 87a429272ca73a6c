package org.jointwright.text;

import java.text.MessageFormat;
import java.util.Locale;
import org.jointwright.measure.Area;
import org.jointwright.measure.AreaPrinter;
import org.jointwright.measure.Density;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.LiquidPrinter;
import org.jointwright.measure.RatePrinter;
import org.jointwright.measure.Rounding;
import org.jointwright.measure.Spread;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumePrinter;
import org.jointwright.measure.Weight;
import org.jointwright.measure.WeightPrinter;

/**
 * Says things in a reader's language and measures.
 *
 * <p>A key such as {@code check.m1.tooLong} is looked up in the bundle that its first part names,
 * {@code check.properties}, or {@code check_es.properties} for a reader of Spanish. The text there
 * is a {@link MessageFormat}: an apostrophe is written twice. A {@link Length}, {@link Area},
 * {@link Volume} or another measure among the arguments is printed in the reader's measures;
 * numbers are printed as the language does, so what is no quantity (a year, a page) is best given
 * as text. Where the text holds lengths of its own, as examples do, the same key with {@code
 * .inMetres} after it says them to a reader of metres.
 */
public final class Words {
  private static final String METRIC = ".inMetres";

  private final Locale locale;
  private final UnitSystem units;
  private final Rounding rounding;
  private final Bundles bundles;

  private Words(Locale locale, UnitSystem units, Rounding rounding, Bundles bundles) {
    this.locale = locale;
    this.units = units;
    this.rounding = rounding;
    this.bundles = bundles;
  }

  /** English, lengths to the step that a tape is read to. */
  public static Words english(UnitSystem units) {
    return of(Locale.ENGLISH, units);
  }

  /** English, lengths to {@code rounding}. */
  public static Words english(Rounding rounding) {
    return english(rounding.system()).rounded(rounding);
  }

  /** The words of a language, lengths to the step that a tape is read to. */
  public static Words of(Locale locale, UnitSystem units) {
    return new Words(locale, units, units.rounding(), new Bundles(locale));
  }

  /** The words of a language, lengths to the step that a tape is read to. */
  public static Words of(Language language, UnitSystem units) {
    return of(language.locale(), units);
  }

  /** The same words with lengths printed to another step, and so perhaps in other measures. */
  public Words rounded(Rounding to) {
    return new Words(locale, to.system(), to, bundles);
  }

  /** The reader's language. */
  public Locale locale() {
    return locale;
  }

  /**
   * Whether a finisher who speaks the language has read these words; until then they are a draft.
   */
  public boolean isChecked() {
    return Language.of(locale.getLanguage()).filter(Language::isChecked).isPresent();
  }

  /** The reader's measures. */
  public UnitSystem units() {
    return units;
  }

  /** The step that lengths are printed to. */
  public Rounding rounding() {
    return rounding;
  }

  /**
   * What {@code key} says, its places filled with {@code arguments}.
   *
   * @throws IllegalArgumentException when no bundle has the key: a fault of the program
   */
  public String say(String key, Object... arguments) {
    Object[] shown = new Object[arguments.length];
    for (int i = 0; i < arguments.length; i++) {
      shown[i] = shown(arguments[i]);
    }
    String said = new MessageFormat(bundles.text(inMeasures(key)), locale).format(shown);
    return Language.of(locale.getLanguage()).map(l -> l.joined(said)).orElse(said);
  }

  /**
   * The key of the same words with examples in metres, where there are such and they are wanted.
   */
  private String inMeasures(String key) {
    String metric = key + METRIC;
    return units == UnitSystem.METRIC && bundles.has(metric) ? metric : key;
  }

  /** What is wrong with a text that should have been a length. */
  public String say(LengthFormatException fault) {
    return say(fault.key(), fault.arguments());
  }

  /** Whether a bundle has the key. */
  public boolean knows(String key) {
    return bundles.has(key);
  }

  /** The length in the reader's measures. */
  public String print(Length length) {
    return LengthPrinter.print(length, rounding);
  }

  /**
   * A least length, such as the depth of a cut, to the finest step and rounded up: what is printed
   * must still suffice.
   */
  public String printAtLeast(Length least) {
    return LengthPrinter.print(units.finest().up(least), units.finest());
  }

  /** The area in the reader's measures. */
  public String print(Area area) {
    return AreaPrinter.print(area, units);
  }

  /** The volume in the reader's measures. */
  public String print(Volume volume) {
    return VolumePrinter.print(volume, units);
  }

  private Object shown(Object argument) {
    return switch (argument) {
      case Length length -> print(length);
      case Area area -> print(area);
      case Volume volume -> print(volume);
      case Weight weight -> WeightPrinter.print(weight, units);
      case Density density -> RatePrinter.print(density, units);
      case Spread spread -> RatePrinter.print(spread, units);
      case Liquid liquid -> LiquidPrinter.print(liquid, units);
      default -> argument;
    };
  }
}
