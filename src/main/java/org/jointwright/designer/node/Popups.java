package org.jointwright.designer.node;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * The sizes of menus and lists that open. They are windows of their own, which are not magnified
 * with the one that they belong to; so their text is written as large as it is to be seen, and all
 * about it goes by the text.
 */
public final class Popups {
  /**
   * The size of their text where nothing is magnified, in pixels; {@code window.css} has it too.
   */
  private static final double TEXT = 15;

  private Popups() {}

  /**
   * The addresses of style sheets that make text {@code times} as large as the look is meant; none
   * where it is meant so, for the first window waits for each of them.
   */
  public static List<String> styles(double times) {
    if (times == 1) {
      return List.of();
    }
    String styles =
        ".context-menu, .combo-box-popup .list-view, .combo-box-popup .list-view .list-cell"
            + " { -fx-font-size: "
            + Math.round(TEXT * times * 10) / 10.0
            + "px; }";
    byte[] bytes = styles.getBytes(StandardCharsets.UTF_8);
    return List.of("data:text/css;base64," + Base64.getEncoder().encodeToString(bytes));
  }
}
