package org.jointwright.designer.canvas;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.text.Font;
import org.jointwright.drawing.Weight;
import org.jspecify.annotations.Nullable;

/** The one typeface, loaded from the program's own files. Used on the JavaFX thread only. */
public final class Lato {
  /** The folder where the fonts lie as files, if they do: read there, they are not copied first. */
  private static final String FOLDER = "jointwright.fonts";

  /** What the style sheets ask for by name. */
  private static final List<Weight> IN_STYLES =
      List.of(Weight.REGULAR, Weight.SEMIBOLD, Weight.BOLD);

  private static final Map<Weight, String> NAMES = new EnumMap<>(Weight.class);
  private static final Map<String, Font> FONTS = new HashMap<>();

  private Lato() {}

  /** Loads the weights that style sheets find by name. Others come when they are painted with. */
  public static void load() {
    IN_STYLES.forEach(Lato::name);
  }

  private static String name(Weight weight) {
    return NAMES.computeIfAbsent(weight, Lato::loaded);
  }

  private static String loaded(Weight weight) {
    Optional<String> folder = Optional.ofNullable(System.getProperty(FOLDER));
    Font font = folder.flatMap(f -> inFolder(f, weight)).orElseGet(() -> packed(weight));
    if (font == null) {
      throw new IllegalStateException("the font is missing: " + weight.resource());
    }
    return font.getName();
  }

  /** The face from a file of that folder; empty where none is there that can be read. */
  static Optional<Font> inFolder(String folder, Weight weight) {
    String name = weight.resource().substring(weight.resource().lastIndexOf('/') + 1);
    try {
      Path file = Path.of(folder).resolve(name).toAbsolutePath();
      // The toolkit takes the path from the address as it stands there, with nothing spelled out.
      String slashed = file.toString().replace('\\', '/');
      String address = "file:" + (slashed.startsWith("/") ? "" : "/") + slashed;
      return Files.isReadable(file)
          ? Optional.ofNullable(Font.loadFont(address, 12))
          : Optional.empty();
    } catch (InvalidPathException e) {
      // Whatever the folder is called, the fonts are packed in the program as well.
      return Optional.empty();
    }
  }

  static @Nullable Font packed(Weight weight) {
    try (InputStream in = Lato.class.getResourceAsStream(weight.resource())) {
      return in == null ? null : Font.loadFont(in, 12);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The face of that weight at {@code size} pixels. */
  public static Font of(Weight weight, double size) {
    return FONTS.computeIfAbsent(weight + " " + size, k -> Font.font(name(weight), size));
  }
}
