package org.jointwright.sheet.svg;

import org.jointwright.drawing.Role;

/** What colour a mark is printed in: a cut sheet is black, with grey for what stands beside. */
final class Ink {
  private Ink() {}

  static String of(Role role) {
    return switch (role) {
      case GROUND, PAPER, PANEL, FILLER, ON_MUST, SELECTED_HALO, POINTED_HALO -> "#ffffff";
      case BUILDING -> "#f0efec";
      case STREET -> "#e6e5e2";
      case OUTLINE,
          WALL,
          FEATURE,
          GIVEN,
          ZONE,
          CONTRACTION,
          CONSTRUCTION,
          FILLER_LINE,
          FIXED,
          TEXT,
          QUIET_TEXT,
          DIMENSION,
          STRING,
          CRACK,
          MUST,
          SHOULD,
          ON_SHOULD,
          NOTE,
          SELECTED,
          POINTED,
          RULE ->
          "#000000";
    };
  }
}
