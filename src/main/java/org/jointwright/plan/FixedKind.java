package org.jointwright.plan;

/** What a fixed object is; decides only words and symbols, not rules. */
public enum FixedKind {
  POST,
  COLUMN,
  DRAIN,
  CLEANOUT,
  HYDRANT,
  TREE,
  /** Anything else. */
  OTHER
}
