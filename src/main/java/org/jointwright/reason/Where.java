package org.jointwright.reason;

/** The part of a joint that a reason is about. */
public enum Where {
  /** Its first end. */
  START,
  /** Its last end. */
  END,
  /** All of it. */
  ALONG
}
