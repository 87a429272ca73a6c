package org.jointwright.designer.settings;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import org.jointwright.text.Language;

/**
 * A small text file that remembers the user's choices: a line {@code name=word} for each. What it
 * does not say, or says in words that nobody knows, is as if nothing had been chosen.
 *
 * @param file the file; its folder is made when there is something to remember
 */
public record SettingsFile(Path file) implements SettingsPlace {
  private static final String NAME = "settings.properties";

  /** The file in the folder of this user's own. */
  public static SettingsFile ofUser() {
    return new SettingsFile(OwnFolder.path().resolve(NAME));
  }

  @Override
  public Settings read() {
    Properties said = new Properties();
    if (Files.isRegularFile(file)) {
      try (Reader in = Files.newBufferedReader(file)) {
        said.load(in);
      } catch (IOException | IllegalArgumentException e) {
        // A file that cannot be read costs the choices, never the start.
        said.clear();
      }
    }
    Settings first = Settings.FIRST;
    return new Settings(
        Language.of(said.getProperty("language", "")).orElse(first.language()),
        word(said, "measures", Measures.values(), first.measures()),
        word(said, "look", Look.values(), first.look()),
        word(said, "text", TextSize.values(), first.text()));
  }

  private static <E extends Enum<E>> E word(Properties said, String name, E[] words, E usual) {
    String word = said.getProperty(name, "");
    return Arrays.stream(words).filter(w -> word(w).equals(word)).findFirst().orElse(usual);
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public void write(Settings settings) {
    String text =
        "language="
            + settings.language().code()
            + "\nmeasures="
            + word(settings.measures())
            + "\nlook="
            + word(settings.look())
            + "\ntext="
            + word(settings.text())
            + "\n";
    Path half = file.resolveSibling(NAME + ".new");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(half, text);
      Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // The choice holds until the window closes; it is no reason to stop anybody's work.
      half.toFile().deleteOnExit();
    }
  }
}
