package org.jointwright.practice;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.Mix.Exposure;

/** What concrete outdoors must be, by what weather and salt do to it. */
public final class Mixes {
  private static final String IRC = "IRC table R402.2";
  private static final String SUMMARY = "porches, carport slabs and steps, as summarized";
  private static final String ACI_318 = "ACI 318-19 table 19.3.3.1";

  /** How stiff it may come at most: wetter concrete scales. */
  public static final Limit<Length> SLUMP =
      Limit.of(
          Length.inches(4),
          Cited.secondHand("ACI 302", "", "as quoted by a trade journal on scaling"));

  /** How far the air may be off what was ordered, in percent of the volume. */
  public static final Limit<Double> AIR_TOLERANCE =
      Limit.of(1.5, Cited.secondHand("ASTM C94", "", "7.2, as quoted"));

  /** The water for each part of cement, at most, where salt is spread. */
  public static final Limit<Double> WATER_WITH_SALT = Limit.of(0.45, salted());

  /**
   * The air for a size of stone.
   *
   * @param stone the nominal maximum size of the stone
   * @param moderate percent where it seldom freezes wet
   * @param severe percent where it freezes wet
   */
  public record Air(Length stone, double moderate, double severe) {}

  /** Air by size of stone, percent of the volume. */
  public static final Limit<List<Air>> AIR =
      Limit.of(
          List.of(
              new Air(Length.inches(3.0 / 8), 6, 7.5),
              new Air(Length.inches(1.0 / 2), 5.5, 7),
              new Air(Length.inches(3.0 / 4), 5, 6),
              new Air(Length.inches(1), 4.5, 6),
              new Air(Length.inches(3.0 / 2), 4.5, 5.5),
              new Air(Length.inches(2), 4, 5)),
          Cited.memory(ACI_318, "", "classes F1 and F2"));

  /** The band that another document allows about the severe figures: lowest and highest. */
  public static final Limit<List<List<Double>>> AIR_BAND =
      Limit.of(
          List.of(
              List.of(6.0, 10.0),
              List.of(5.0, 9.0),
              List.of(4.0, 8.0),
              List.of(3.5, 6.5),
              List.of(3.0, 6.0),
              List.of(2.5, 5.5)),
          Cited.read("UFGS 03311", "", "table 3"));

  private Mixes() {}

  private static Cited salted() {
    return Cited.secondHand("ACI 332-20", "2020", "class RF3, as told by an association");
  }

  /** The least strength, pounds on a square inch, 28 days old. */
  public static Limit<Integer> strength(Exposure exposure) {
    return switch (exposure) {
      case NEGLIGIBLE -> Limit.of(2500, Cited.secondHand(IRC, "", SUMMARY));
      case MODERATE -> Limit.of(3000, Cited.secondHand(IRC, "", SUMMARY));
      case SEVERE -> Limit.of(3500, Cited.secondHand(IRC, "", SUMMARY));
      case DEICERS -> Limit.of(4500, salted());
    };
  }
}
