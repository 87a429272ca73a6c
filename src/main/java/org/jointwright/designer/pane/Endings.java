package org.jointwright.designer.pane;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What a file is, by the end of its name. */
final class Endings {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");
  private static final List<String> PLANS = List.of(".json", ".svg", ".pdf");

  private Endings() {}

  /** Whether it is a picture to lie beneath the plan. */
  static boolean isPicture(Path file) {
    return PICTURES.stream().anyMatch(low(file)::endsWith);
  }

  /** Whether it can be opened: a plan, or a sheet with the plan inside. */
  static boolean isPlan(Path file) {
    return PLANS.stream().anyMatch(low(file)::endsWith);
  }

  private static String low(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
  }
}
