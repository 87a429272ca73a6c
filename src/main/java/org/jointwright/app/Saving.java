package org.jointwright.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jointwright.file.save.SafeSave;

/** Writes files whole or not at all. */
public final class Saving {
  private Saving() {}

  /**
   * Writes a file; the version before is kept beside it.
   *
   * @throws IOException when it cannot be written; the file is then as it was
   */
  public static void save(Path file, byte[] bytes) throws IOException {
    SafeSave.saveWithBackup(file, bytes);
  }

  /**
   * Writes down something that is handy to know next time, in a folder that is made where there is
   * none. Where it cannot be written it is forgotten: that is no reason to stop anybody’s work.
   */
  public static void remember(Path file, String text) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      SafeSave.save(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      // Nothing depends on it.
    }
  }
}
