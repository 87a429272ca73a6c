package org.jointwright.designer.start;

import java.util.Locale;
import javafx.application.ColorScheme;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.text.Font;
import org.jointwright.designer.canvas.Theme;
import org.jointwright.designer.settings.Look;

/** How the system's other windows look. Used on the JavaFX thread. */
final class SystemLook {
  /**
   * The size of the toolkit's own text where the user has left the system's as it comes: 12 on
   * Windows, 13 elsewhere (from memory).
   */
  private static final double ON_WINDOWS = 12;

  private static final double ELSEWHERE = 13;

  private ChangeListener<ColorScheme> watching = (o, was, is) -> {};

  /** The theme of a window that looks so. */
  Theme theme(Look look) {
    boolean isDark = Platform.getPreferences().getColorScheme() == ColorScheme.DARK;
    return look.isDark(isDark) ? Theme.DARK : Theme.LIGHT;
  }

  /** How many times as large as usual the system's text is, as far as the toolkit says. */
  double textTimes() {
    boolean isWindows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("windows");
    return Font.getDefault().getSize() / (isWindows ? ON_WINDOWS : ELSEWHERE);
  }

  /** Has {@code then} done when the system turns dark or light. */
  void watch(Runnable then) {
    watching = (o, was, is) -> then.run();
    Platform.getPreferences().colorSchemeProperty().addListener(watching);
  }

  /** Watches no more. */
  void close() {
    Platform.getPreferences().colorSchemeProperty().removeListener(watching);
  }
}
