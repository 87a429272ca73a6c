package org.jointwright.designer.pane;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What a file is, by the end of its name. */
final class Endings {
  private static final List<String> PICTURES = List.of(".png", ".jpg", ".jpeg");
  private static final String PLAN = ".json";

  private Endings() {}

  /** Whether it is a picture to lie beneath the plan. */
  static boolean isPicture(Path file) {
    return PICTURES.stream().anyMatch(low(file)::endsWith);
  }

  /** Whether it is a plan. */
  static boolean isPlan(Path file) {
    return low(file).endsWith(PLAN);
  }

  private static String low(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
  }
}
