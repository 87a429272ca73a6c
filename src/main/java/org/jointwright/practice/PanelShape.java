package org.jointwright.practice;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.plan.Jointing;

/** Limits on the shape of a panel. */
public final class PanelShape {
  /** The strict choice of longer side over shorter. */
  public static final Limit<Double> ASPECT_STRICT =
      Limit.of(
          1.25,
          Cited.read(Documents.TM_5_809_12, "1987", "on nonreinforced slabs"),
          Cited.read(Documents.ACI_330, "as copied in 1996", "on panel shape"));

  /** The usual choice, and the default. */
  public static final Limit<Double> ASPECT_USUAL =
      Limit.of(1.5, Documents.CIP_6_TEXT, Cited.read("SUDAS Design Manual", "", "section 5G-2"));

  /** The loosest choice; also allowed to panels that keep a sharp corner of the outline. */
  public static final Limit<Double> ASPECT_LOOSE = Limit.of(2.0, Documents.HANDBOOK_JOINTS);

  /** The named choices of longer side over shorter, strictest first. */
  public static final List<Limit<Double>> ASPECT_CHOICES =
      List.of(ASPECT_STRICT, ASPECT_USUAL, ASPECT_LOOSE);

  /** The narrowest panel. */
  public static final Limit<Length> NARROWEST =
      Limit.of(Length.feet(2), Documents.ACPA_JOINTING, Documents.HANDBOOK_JOINTS);

  /** How much longer a panel may be that has an arc of the slab's edge: its bow is not its span. */
  public static final Limit<Double> BOW = Limit.of(1.03, Cited.ownChoice());

  /** A panel that fills less of its enclosing rectangle than this is no panel but an L or a T. */
  public static final Limit<Double> LEAST_FILL =
      Limit.of(
          0.45,
          Cited.ownChoice(),
          Cited.secondHand(Documents.CIP_6, "", "on L-shaped panels, no figure"));

  /** A panel fills this much of its enclosing rectangle as a rule. */
  public static final Limit<Double> USUAL_FILL = Limit.of(0.60, Cited.ownChoice());

  /** A panel is no smaller than this share of the slab's mean panel. */
  public static final Limit<Double> SMALLEST = Limit.of(0.20, Cited.ownChoice());

  /** The spread of a slab's panel areas, standard deviation over mean, that is still even. */
  public static final Limit<Double> SPREAD = Limit.of(0.50, Cited.ownChoice());

  private PanelShape() {}

  /**
   * The most a panel's longer side may be over its shorter, by the plan's choice or the default.
   */
  public static double aspect(Jointing jointing) {
    return jointing.aspect().orElse(ASPECT_USUAL.value());
  }

  /** The narrowest panel, by the plan's choice or the default. */
  public static Length narrowest(Jointing jointing) {
    return jointing.minPanel().orElse(NARROWEST.value());
  }
}
