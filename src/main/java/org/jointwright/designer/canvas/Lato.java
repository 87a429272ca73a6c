package org.jointwright.designer.canvas;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import org.jointwright.drawing.Weight;

/** The one typeface, loaded from the program's own files. Used on the JavaFX thread only. */
public final class Lato {
  private static final Map<Weight, String> NAMES = new EnumMap<>(Weight.class);
  private static final Map<String, Font> FONTS = new HashMap<>();

  private Lato() {}

  /** Loads every weight, so that style sheets find them by name. */
  public static void load() {
    for (Weight weight : Weight.values()) {
      NAMES.computeIfAbsent(weight, Lato::name);
    }
  }

  private static String name(Weight weight) {
    try (InputStream in = Lato.class.getResourceAsStream(weight.resource())) {
      Font font = in == null ? null : Font.loadFont(in, 12);
      if (font == null) {
        throw new IllegalStateException("the font is missing: " + weight.resource());
      }
      return font.getName();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The face of that weight at {@code size} pixels. */
  public static Font of(Weight weight, double size) {
    load();
    return FONTS.computeIfAbsent(
        weight + " " + size, k -> Font.font(NAMES.getOrDefault(weight, "Lato"), size));
  }
}
