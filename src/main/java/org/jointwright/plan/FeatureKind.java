package org.jointwright.plan;

/** What stands along an edge; decides words and marks only, not rules. */
public enum FeatureKind {
  GARAGE_DOOR,
  DOOR,
  STEP,
  WALK,
  /** Anything else that people see. */
  OTHER
}
