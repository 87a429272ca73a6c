package org.jointwright.plan;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;

/**
 * What is known of one edge.
 *
 * @param against what it is against
 * @param floats the user's word that nothing holds the slab there, so that no isolation is asked
 * @param thickened how much thicker the slab is along it, if it is
 * @param features what people see along it, in the order they were named
 * @param kept what the file said besides
 */
public record EdgeSetting(
    Against against,
    boolean floats,
    Optional<Thickened> thickened,
    List<Feature> features,
    Kept kept) {
  /**
   * How much thicker a slab is along one of its edges.
   *
   * @param depth how thick the slab is at the edge; empty for the usual, which goes by its
   *     thickness
   * @param over how far from the edge it comes back to its thickness; empty for the usual
   * @param kept what the file said besides
   */
  public record Thickened(Optional<Length> depth, Optional<Length> over, Kept kept) {
    /** It comes back to the slab’s thickness no nearer to the edge, or a unit was mistaken. */
    public static final Length NARROWEST = Length.inches(1);

    /** Nor farther. */
    public static final Length WIDEST = Length.feet(20);

    /** As thick and as wide as is usual. */
    public static final Thickened USUAL =
        new Thickened(Optional.empty(), Optional.empty(), Kept.NOTHING);

    /** The same, so thick at the edge. */
    public Thickened withDepth(Length value) {
      return new Thickened(Optional.of(value), over, kept);
    }

    /** The same, so wide. */
    public Thickened withOver(Length value) {
      return new Thickened(depth, Optional.of(value), kept);
    }
  }

  /** Open ground. */
  public static final EdgeSetting OPEN = against(Against.OPEN);

  /** Copies the list. */
  public EdgeSetting {
    features = List.copyOf(features);
  }

  /** An edge against something that holds it. */
  public static EdgeSetting against(Against against) {
    return new EdgeSetting(against, false, Optional.empty(), List.of(), Kept.NOTHING);
  }

  /** Whether the whole edge must carry an isolation joint. */
  public boolean needsIsolation() {
    return against.needsIsolation() && !floats;
  }

  /** This edge against something else. */
  public EdgeSetting withAgainst(Against value) {
    return new EdgeSetting(value, floats, thickened, features, kept);
  }

  /** This edge held, or not. */
  public EdgeSetting withFloats(boolean value) {
    return new EdgeSetting(against, value, thickened, features, kept);
  }

  /** This edge with other features. */
  public EdgeSetting withFeatures(List<Feature> value) {
    return new EdgeSetting(against, floats, thickened, value, kept);
  }

  /** This edge thickened, or not. */
  public EdgeSetting withThickened(Optional<Thickened> value) {
    return new EdgeSetting(against, floats, value, features, kept);
  }
}
