package org.jointwright.practice;

/** The documents that more than one figure comes from. */
final class Documents {
  static final String CIP_6 = "NRMCA Concrete in Practice 6";
  static final String PCA_FLOORS = "PCA Concrete Floors on Ground";
  static final String ACI_330 = "ACI 330 guide for parking lots";
  static final String TM_5_809_12 = "TM 5-809-12";
  static final String ACPA = "ACPA wiki";
  static final String UFGS_03300N = "UFGS 03300N";
  static final String MATTESON = "Matteson, Illinois, code of ordinances";
  static final String IRREGULAR = "trade journal article on irregularly shaped slabs";

  static final Cited CIP_6_TEXT = Cited.secondHand(CIP_6, "", "as reproduced in a how-to text");
  static final Cited ACPA_JOINTING = Cited.read(ACPA, "", "page on joint layout");

  static final Cited HANDBOOK_JOINTS =
      Cited.read(
          "Highway Engineering Handbook", "", "rigid pavement jointing details for intersections");

  private Documents() {}
}
