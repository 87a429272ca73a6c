package org.jointwright.designer.node;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sizes of menus and lists that open. They are windows of their own, which are not magnified
 * with the one that they belong to; so their sizes are written as large as they are to be seen.
 */
public final class Popups {
  private static final String SIZES =
      """
      .context-menu { -fx-padding: 6px; -fx-font-size: 15px; }
      .context-menu .menu-item { -fx-padding: 7px 14px 7px 14px; }
      .context-menu .accelerator-text { -fx-padding: 0 0 0 24px; }
      .combo-box-popup .list-view { -fx-min-width: 168px; }
      .combo-box-popup .list-view .list-cell { -fx-padding: 6px 10px 6px 10px; -fx-font-size: 15px; }
      """;

  private static final Pattern PIXELS = Pattern.compile("(\\d+)px");

  private Popups() {}

  /** The address of a style sheet of sizes {@code times} as large as the look is meant. */
  public static String styles(double times) {
    Matcher sizes = PIXELS.matcher(SIZES);
    String styles =
        sizes.replaceAll(
            m -> String.format(Locale.ROOT, "%.1fpx", Integer.parseInt(m.group(1)) * times));
    byte[] bytes = styles.getBytes(StandardCharsets.UTF_8);
    return "data:text/css;base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
