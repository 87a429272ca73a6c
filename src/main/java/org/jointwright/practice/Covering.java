package org.jointwright.practice;

import java.util.List;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Spread;

/** What goes on a slab or into it by its area. */
public final class Covering {
  private static final double SQUARE_FOOT = 144;

  /** How far curing compound goes, where its maker says nothing else. */
  public static final Limit<Spread> CURE =
      Limit.of(
          new Spread(new Area(200 * SQUARE_FOOT)),
          Cited.memory("ASTM C309", "", "rate of testing"));

  /** How far the first coat of a sealer goes. */
  public static final Limit<Spread> SEAL =
      Limit.of(
          new Spread(new Area(200 * SQUARE_FOOT)),
          Cited.secondHand("ASTM C1315", "", "type II, as summarized by a maker"));

  /** How long and how wide a flat sheet of welded wire is. */
  public static final Limit<List<Length>> SHEET =
      Limit.of(
          List.of(Length.feet(10), Length.feet(5)),
          Cited.read("wire suppliers’ lists", "", "6x6 W1.4 sheets"));

  /** By how much a sheet laps the next: one mesh of 6 in and 2 in more. */
  public static final Limit<Length> LAP =
      Limit.of(Length.inches(8), Cited.memory("ACI 318", "", "lap of plain welded wire"));

  private Covering() {}
}
