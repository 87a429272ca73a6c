package org.jointwright.drawing;

/** Which point of a line of text stands at the given place, on its baseline. */
public enum Anchor {
  START,
  MIDDLE,
  END
}
