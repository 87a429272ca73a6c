package org.jointwright.practice;

import org.jointwright.measure.Length;

/** The slab's thickness, what is under it, and how deep to dig. */
public final class Section {
  /** No slab of flatwork is thicker: a figure over this is a slip of units. */
  public static final Limit<Length> THICKEST = Limit.of(Length.inches(24), Cited.ownChoice());

  /** The thinnest walk. */
  public static final Limit<Length> WALK =
      Limit.of(Length.inches(4), Cited.read(Documents.UFGS_03300N, "", "3.8.3"));

  /** What cars need on a drive. */
  public static final Limit<Length> DRIVE =
      Limit.of(
          Length.inches(4), Cited.read("supplier's standards guide", "", "residential drives"));

  /** The stone base under a slab. */
  public static final Limit<Length> BASE =
      Limit.of(
          Length.inches(4),
          Cited.secondHand("IRC", "2009", "R506.2.2, as summarised for slabs on grade"));

  /** The thickest layer that is compacted at once. */
  public static final Limit<Length> LIFT =
      Limit.of(Length.inches(6), Cited.read("county curb specification", "", "backfill"));

  /** A thickened edge against the slab's thickness. */
  public static final Limit<Double> THICKENED_EDGE =
      Limit.of(
          1.25,
          Cited.read(Documents.TM_5_809_12, "1987", "free edges"),
          Cited.read("UFC 3-260-02", "2001", "chapter 12"));

  /** How far from the edge a thickened edge tapers back to the slab's thickness. */
  public static final Limit<Length> THICKENED_TAPER =
      Limit.of(
          Length.feet(5),
          Cited.read(Documents.TM_5_809_12, "1987", "free edges"),
          Cited.read("UFC 3-260-02", "2001", "chapter 12"));

  private Section() {}

  /** How deep to dig below the string, which is the top of the form: slab and base. */
  public static Length digBelowString(Length thickness, Length base) {
    return Length.inches(thickness.inches() + base.inches());
  }

  /** The depth of a thickened edge. */
  public static Length thickenedEdge(Length thickness) {
    return Length.inches(THICKENED_EDGE.value() * thickness.inches());
  }
}
