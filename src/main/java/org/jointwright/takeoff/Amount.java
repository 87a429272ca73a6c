package org.jointwright.takeoff;

import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.Volume;
import org.jointwright.measure.Weight;

/** How much of something. */
public sealed interface Amount {
  /** What the words print. */
  Object value();

  /** Concrete, or a base as it lies. */
  record OfVolume(Volume value) implements Amount {}

  /** Stone by the ton. */
  record OfWeight(Weight value) implements Amount {}

  /** Boards, filler, cuts. */
  record OfLength(Length value) implements Amount {}

  /** What covers. */
  record OfArea(Area value) implements Amount {}

  /** What is sprayed or rolled on. */
  record OfLiquid(Liquid value) implements Amount {}

  /** Things that are counted. */
  record Pieces(Integer value) implements Amount {}
}
