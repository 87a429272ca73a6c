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
  },
  /** The colours of concrete, stone and lawn: what an owner looks at and hangs up. */
  COLOURED {
    @Override
    public int of(Role role) {
      return switch (role) {
        case GROUND -> 0xf0f3e6;
        case PAPER, ON_MUST -> 0xffffff;
        case PANEL -> 0xe4e1da;
        case BUILDING -> 0xddd4c5;
        case STREET -> 0xcfcdc8;
        case FILLER -> 0xd9b98f;
        case FILLER_LINE -> 0x54371d;
        case RULE -> 0xc9c3b6;
        case QUIET_TEXT -> 0x5b564d;
        case CONTRACTION -> 0x35322d;
        case FIXED -> 0x46525c;
        case SELECTED, POINTED -> 0x12539e;
        case SELECTED_HALO, POINTED_HALO -> 0xbad4f0;
        case MUST, CRACK -> 0xb8301e;
        case SHOULD -> 0xf0b429;
        case STRING -> 0xae1a78;
        case OUTLINE, WALL, FEATURE, GIVEN, ZONE, CONSTRUCTION, TEXT, DIMENSION, ON_SHOULD, NOTE ->
            0x24221e;
      };
    }
  };

  /** The colour of a mark's role: red, green and blue, eight bits each, red first. */
  public abstract int of(Role role);
}
