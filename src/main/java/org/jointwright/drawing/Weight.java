package org.jointwright.drawing;

/** The weights of the one typeface. */
public enum Weight {
  REGULAR("Regular", 400),
  MEDIUM("Medium", 500),
  SEMIBOLD("Semibold", 600),
  BOLD("Bold", 700),
  HEAVY("Heavy", 800);

  private final String face;
  private final int number;

  Weight(String face, int number) {
    this.face = face;
    this.number = number;
  }

  /** The font's resource, from the root of the class path. */
  public String resource() {
    return "/org/jointwright/fonts/Lato-" + face + ".ttf";
  }

  /** The weight as a number, 400 is regular. */
  public int number() {
    return number;
  }
}
