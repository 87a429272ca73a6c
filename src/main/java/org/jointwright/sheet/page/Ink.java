package org.jointwright.sheet.page;

import org.jointwright.drawing.Role;

/** What colours the marks of a page are printed in. */
public enum Ink {
  /** Black, with grey for what stands beside: read wet, in any light, from any printer. */
  BLACK {
    @Override
    public int of(Role role) {
      return switch (role) {
        case GROUND, PAPER, PANEL, FILLER, ON_MUST, SELECTED_HALO, POINTED_HALO -> 0xffffff;
        case BUILDING -> 0xf0efec;
        case STREET -> 0xe6e5e2;
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
            0x000000;
      };
    }
  };

  /** The colour of a mark's role: red, green and blue, eight bits each, red first. */
  public abstract int of(Role role);
}
