package org.jointwright.plan;

import java.util.List;

/**
 * What is known of one edge.
 *
 * @param against what it is against
 * @param floats the user's word that nothing holds the slab there, so that no isolation is asked
 * @param features what people see along it, in the order they were named
 * @param kept what the file said besides
 */
public record EdgeSetting(Against against, boolean floats, List<Feature> features, Kept kept) {
  /** Open ground. */
  public static final EdgeSetting OPEN = against(Against.OPEN);

  /** Copies the list. */
  public EdgeSetting {
    features = List.copyOf(features);
  }

  /** An edge against something that holds it. */
  public static EdgeSetting against(Against against) {
    return new EdgeSetting(against, false, List.of(), Kept.NOTHING);
  }

  /** Whether the whole edge must carry an isolation joint. */
  public boolean needsIsolation() {
    return against.needsIsolation() && !floats;
  }

  /** This edge against something else. */
  public EdgeSetting withAgainst(Against value) {
    return new EdgeSetting(value, floats, features, kept);
  }

  /** This edge held, or not. */
  public EdgeSetting withFloats(boolean value) {
    return new EdgeSetting(against, value, features, kept);
  }

  /** This edge with other features. */
  public EdgeSetting withFeatures(List<Feature> value) {
    return new EdgeSetting(against, floats, value, kept);
  }
}
