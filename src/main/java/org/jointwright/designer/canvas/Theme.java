package org.jointwright.designer.canvas;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.paint.Color;
import org.jointwright.drawing.Role;

/** The colours of the window: the one place where they are written. */
public enum Theme {
  /** Paper and wet concrete by day. */
  LIGHT;

  private static final Map<Role, Color> BY_DAY = byDay();

  private static Map<Role, Color> byDay() {
    Map<Role, Color> roles = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      roles.put(role, Color.web(light(role)));
    }
    return roles;
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

  /** The side panes. */
  private static final String PANE = "#F3F0E9";

  /** What can be typed in or pressed, and its edge. */
  private static final String CONTROL = "#FFFFFF";

  private static final String CONTROL_EDGE = "#837C6F";

  /** The colour of a role. */
  public Color color(Role role) {
    return BY_DAY.getOrDefault(role, Color.BLACK);
  }

  /** The colours under the names that the style sheet uses. */
  public String styles() {
    StringBuilder styles = new StringBuilder();
    add(styles, "pane", PANE);
    add(styles, "control", CONTROL);
    add(styles, "control-edge", CONTROL_EDGE);
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
    return String.format(
        java.util.Locale.ROOT,
        "#%02X%02X%02X",
        Math.round(c.getRed() * 255),
        Math.round(c.getGreen() * 255),
        Math.round(c.getBlue() * 255));
  }
}
