package org.jointwright.app;

import java.io.IOException;
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
}
