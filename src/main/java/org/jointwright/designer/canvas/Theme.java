package org.jointwright.designer.canvas;

import java.util.EnumMap;
import java.util.HexFormat;
import java.util.Map;
import javafx.scene.paint.Color;
import org.jointwright.drawing.Role;

/** The colours of the window: the one place where they are written. */
public enum Theme {
  /** Paper and wet concrete by day. */
  LIGHT("#F3F0E9", "#FFFFFF", "#837C6F"),
  /** Chalk on slate. */
  DARK("#2E3233", "#232627", "#8E918F");

  private static final HexFormat HEX = HexFormat.of().withUpperCase();
  private static final Map<Theme, Map<Role, Color>> COLORS = colors();

  private final String pane;
  private final String control;
  private final String controlEdge;

  /**
   * A theme.
   *
   * @param pane the side panes
   * @param control what can be typed in or pressed
   * @param controlEdge its edge
   */
  Theme(String pane, String control, String controlEdge) {
    this.pane = pane;
    this.control = control;
    this.controlEdge = controlEdge;
  }

  private static Map<Theme, Map<Role, Color>> colors() {
    Map<Theme, Map<Role, Color>> all = new EnumMap<>(Theme.class);
    for (Theme theme : values()) {
      Map<Role, Color> roles = new EnumMap<>(Role.class);
      for (Role role : Role.values()) {
        roles.put(role, Color.web(theme == DARK ? dark(role) : light(role)));
      }
      all.put(theme, roles);
    }
    return all;
  }

  private static String light(Role role) {
    return switch (role) {
      case GROUND -> "#E7E3DA";
      case PAPER -> "#FBF9F4";
      case PANEL -> "#DFDCD3";
      case BUILDING -> "#D3CBBD";
      case STREET -> "#CFCDC8";
      case OUTLINE, CONSTRUCTION, TEXT, WALL, ON_SHOULD -> "#24221E";
      case QUIET_TEXT, DIMENSION, FEATURE, GIVEN, ZONE -> "#5B564D";
      case CONTRACTION -> "#35322D";
      case FILLER_LINE -> "#54371D";
      case FILLER -> "#D9B98F";
      case FIXED -> "#46525C";
      case STRING -> "#AE1A78";
      case CRACK, MUST -> "#B8301E";
      case ON_MUST -> "#FFFFFF";
      case SHOULD -> "#F0B429";
      case NOTE -> "#55524C";
      case SELECTED -> "#12539E";
      case SELECTED_HALO -> "#BAD4F0";
      case POINTED -> "#3F78B5";
      case POINTED_HALO -> "#DDEAF7";
      case RULE -> "#C9C3B6";
    };
  }

  private static String dark(Role role) {
    return switch (role) {
      case GROUND -> "#26292A";
      case PAPER -> "#363A3B";
      case PANEL -> "#4D5256";
      case BUILDING -> "#43413D";
      case STREET -> "#3F4345";
      case OUTLINE, CONSTRUCTION, TEXT, WALL -> "#F1EEE7";
      case QUIET_TEXT, DIMENSION, FEATURE, GIVEN, ZONE -> "#CFCABF";
      case CONTRACTION -> "#E4E0D7";
      case FILLER_LINE -> "#F3DCB8";
      case FILLER -> "#7A5636";
      case FIXED -> "#C9D3DA";
      case STRING -> "#FFA0CE";
      case CRACK, MUST -> "#FF927B";
      case ON_MUST -> "#2A1410";
      case SHOULD -> "#F0B429";
      case ON_SHOULD -> "#24221E";
      case NOTE -> "#DAD6CC";
      case SELECTED -> "#9CCBFF";
      case SELECTED_HALO -> "#2F5880";
      case POINTED -> "#BBD9F7";
      case POINTED_HALO -> "#45586B";
      case RULE -> "#4B5052";
    };
  }

  /** The colour of a role. */
  public Color color(Role role) {
    return COLORS.getOrDefault(this, Map.of()).getOrDefault(role, Color.BLACK);
  }

  /** The colours under the names that the style sheet uses. */
  public String styles() {
    StringBuilder styles = new StringBuilder();
    add(styles, "pane", pane);
    add(styles, "control", control);
    add(styles, "control-edge", controlEdge);
    for (Role role : Role.values()) {
      String name = role.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      add(styles, name, web(color(role)));
    }
    return styles.toString();
  }

  private static void add(StringBuilder styles, String name, String color) {
    styles.append("-look-").append(name).append(": ").append(color).append("; ");
  }

  private static String web(Color c) {
    return "#" + hex(c.getRed()) + hex(c.getGreen()) + hex(c.getBlue());
  }

  private static String hex(double share) {
    return HEX.toHexDigits((byte) Math.round(share * 255));
  }
}
