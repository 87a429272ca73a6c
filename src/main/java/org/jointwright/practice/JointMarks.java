package org.jointwright.practice;

import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;

/** Where on an edge a joint is best measured out. */
public final class JointMarks {
  private static final Cited EASILY_MEASURED =
      Cited.read("UFC 3-260-02", "2001", "chapter 12, on easily measured spacings");

  /** The step from mark to mark in feet and inches. */
  public static final Limit<Length> INCH =
      Limit.of(Length.inches(1), EASILY_MEASURED, Cited.ownChoice());

  /** The step from mark to mark in a metric plan. */
  public static final Limit<Length> METRIC =
      Limit.of(Length.of(10, LengthUnit.MILLIMETRE), EASILY_MEASURED, Cited.ownChoice());

  /** Joints meet those of a neighbour: a crack goes on from one that is missed. */
  public static final Cited MATCHED = Documents.ACPA_JOINTING;

  private JointMarks() {}

  /** The step from mark to mark in those measures. */
  public static Limit<Length> step(UnitSystem units) {
    return units == UnitSystem.METRIC ? METRIC : INCH;
  }
}
