package org.jointwright.designer.start;

import java.lang.foreign.Arena;
import java.lang.foreign.SymbolLookup;
import java.util.List;
import java.util.Locale;

/**
 * Whether this machine can show a window. Asked before the toolkit is started, because that prints
 * traces of its own where something is missing.
 */
final class Display {
  /** What the toolkit loads on Linux, and what draws its text there. */
  private static final List<String> LIBRARIES =
      List.of("libgtk-3.so.0", "libXtst.so.6", "libpangoft2-1.0.so.0");

  private Display() {}

  static boolean isThere() {
    if (System.getProperty("glass.platform") != null) {
      return true;
    }
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (!system.contains("linux")) {
      return true;
    }
    String screen = System.getenv("DISPLAY");
    return screen != null && !screen.isBlank() && LIBRARIES.stream().allMatch(Display::loads);
  }

  /** Loads it for good, as the toolkit does a moment later; nothing in it is called from here. */
  @SuppressWarnings("restricted")
  private static boolean loads(String library) {
    try {
      return SymbolLookup.libraryLookup(library, Arena.global()) != null;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
