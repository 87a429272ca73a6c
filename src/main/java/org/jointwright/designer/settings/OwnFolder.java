package org.jointwright.designer.settings;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * The folder in which the program keeps what is neither a plan nor a sheet, for this user alone. It
 * may not exist yet.
 */
public final class OwnFolder {
  /** Names another folder; for tests, and for a program carried on a stick. */
  private static final String ELSEWHERE = "jointwright.folder";

  private static final String NAME = "jointwright";

  private OwnFolder() {}

  /** The folder, by the habits of the system. */
  public static Path path() {
    return Optional.ofNullable(System.getProperty(ELSEWHERE))
        .map(Path::of)
        .orElseGet(() -> usual(System.getProperty("os.name", "").toLowerCase(Locale.ROOT)));
  }

  private static Path usual(String system) {
    Path home = Path.of(System.getProperty("user.home", "."));
    if (system.contains("win")) {
      return named("APPDATA").orElse(home).resolve(NAME);
    }
    if (system.contains("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve(NAME);
    }
    return named("XDG_CONFIG_HOME").orElse(home.resolve(".config")).resolve(NAME);
  }

  private static Optional<Path> named(String variable) {
    return Optional.ofNullable(System.getenv(variable)).filter(v -> !v.isBlank()).map(Path::of);
  }
}
