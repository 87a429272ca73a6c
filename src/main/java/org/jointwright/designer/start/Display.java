package org.jointwright.designer.start;

import java.lang.foreign.Arena;
import java.lang.foreign.SymbolLookup;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Whether this machine can show a window. Asked before the toolkit is started, because that prints
 * traces of its own where something is missing.
 */
final class Display {
  /** What draws the toolkit's text on Linux. */
  private static final String TEXT = "libpangoft2-1.0.so.0";

  /** What the toolkit loads there besides. */
  private static final List<String> WINDOWS = List.of("libgtk-3.so.0", "libXtst.so.6");

  /** What the toolkit may paint by, in the order of its trying. */
  private static final String PAINTERS = "prism.order";

  /** What a machine with a graphics processor has among its devices, whoever made it. */
  private static final List<String> GRAPHICS =
      List.of("dri", "nvidiactl", "mali0", "kgsl-3d0", "dxg");

  private Display() {}

  static boolean isThere() {
    if (System.getProperty("glass.platform") != null) {
      return true;
    }
    if (!isLinux()) {
      return true;
    }
    String screen = System.getenv("DISPLAY");
    return screen != null
        && !screen.isBlank()
        && WINDOWS.stream().allMatch(Display::loads)
        && hasText();
  }

  /**
   * Has the toolkit paint by the processor alone where a Linux machine has nothing else: it would
   * look for a graphics processor a twentieth of a second long, to come to the same. Called before
   * the toolkit is started; what whoever starts the program has chosen stays.
   */
  static void choosePainter() {
    if (isLinux() && System.getProperty(PAINTERS) == null && !hasGraphics(Path.of("/dev"))) {
      System.setProperty(PAINTERS, "sw");
    }
  }

  /** Whether a Linux machine’s folder of devices has one that paints. */
  static boolean hasGraphics(Path devices) {
    return GRAPHICS.stream().map(devices::resolve).anyMatch(Files::exists);
  }

  /** Whether there is a system with programs that show files: not on a screen of our own. */
  static boolean canShowFiles() {
    return System.getProperty("glass.platform") == null && isThere();
  }

  /** Whether this machine can show text in a window, a headless one too. */
  static boolean hasText() {
    return !isLinux() || loads(TEXT);
  }

  private static boolean isLinux() {
    return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
  }

  /** Where a Linux system keeps its libraries; {@code %s} is its processor, as the folders say. */
  private static final List<String> FOLDERS =
      List.of("/usr/lib/%s-linux-gnu", "/usr/lib64", "/usr/lib", "/lib/%s-linux-gnu", "/lib64");

  /**
   * Whether the toolkit will find it. Where it lies in none of the usual folders, it is loaded for
   * good, as the toolkit does a moment later: that is sure, and takes its time. Nothing in it is
   * called from here.
   */
  @SuppressWarnings("restricted")
  private static boolean loads(String library) {
    String processor = System.getProperty("os.arch", "").replace("amd64", "x86_64");
    if (FOLDERS.stream()
        .map(f -> Path.of(f.replace("%s", processor), library))
        .anyMatch(Files::isReadable)) {
      return true;
    }
    try {
      return SymbolLookup.libraryLookup(library, Arena.global()) != null;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
