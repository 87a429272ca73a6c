package org.jointwright.plan;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;

/**
 * The concrete that is ordered, as far as the user says.
 *
 * @param exposure what weather and salt do to it
 * @param stone the nominal maximum size of its stone, one of {@link #STONES}
 * @param strength its strength, pounds on a square inch; empty for what the exposure asks
 * @param slump how far a cone of it slumps; empty for the usual
 * @param fiber whether fibers go in
 * @param kept what the file said besides
 */
public record Mix(
    Exposure exposure,
    Length stone,
    Optional<Integer> strength,
    Optional<Length> slump,
    boolean fiber,
    Kept kept) {
  /** What weather and salt do to a slab: the words of the residential code’s weathering map. */
  public enum Exposure {
    /** It does not freeze. */
    NEGLIGIBLE,
    /** It freezes now and then, seldom while wet. */
    MODERATE,
    /** It freezes while wet. */
    SEVERE,
    /** It freezes while wet, and salt is spread on it or drips from cars. */
    DEICERS
  }

  /** The sizes of stone, inches: ASTM C33 by its usual names, from memory. */
  public static final List<Length> STONES =
      List.of(
          Length.inches(3.0 / 8),
          Length.inches(1.0 / 2),
          Length.inches(3.0 / 4),
          Length.inches(1),
          Length.inches(3.0 / 2),
          Length.inches(2));

  /** What is ordered where the plan says nothing: it may freeze wet, stone of 3/4 in. */
  public static final Mix USUAL =
      new Mix(
          Exposure.SEVERE,
          Length.inches(3.0 / 4),
          Optional.empty(),
          Optional.empty(),
          false,
          Kept.NOTHING);

  /** No flatwork is weaker, or a slip of the figure; pounds on a square inch. */
  public static final int WEAKEST = 1500;

  /** None is stronger. */
  public static final int STRONGEST = 12_000;
}
