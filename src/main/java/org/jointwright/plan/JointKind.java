package org.jointwright.plan;

/** The kinds of joint. */
public enum JointKind {
  /** Tooled or sawn, to say where the crack runs. */
  CONTRACTION,
  /** Where one pour ends and the next begins. */
  CONSTRUCTION,
  /** Filler the full depth: nothing holds on to anything. */
  ISOLATION
}
