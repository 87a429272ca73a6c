package org.jointwright.plan;

/**
 * What is known of one edge.
 *
 * @param against what it is against
 * @param floats the user's word that nothing holds the slab there, so that no isolation is asked
 * @param kept what the file said besides
 */
public record EdgeSetting(Against against, boolean floats, Kept kept) {
  /** Open ground. */
  public static final EdgeSetting OPEN = new EdgeSetting(Against.OPEN, false, Kept.NOTHING);

  /** An edge against something that holds it. */
  public static EdgeSetting against(Against against) {
    return new EdgeSetting(against, false, Kept.NOTHING);
  }

  /** Whether the whole edge must carry an isolation joint. */
  public boolean needsIsolation() {
    return against.needsIsolation() && !floats;
  }
}
