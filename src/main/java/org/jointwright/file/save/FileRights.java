package org.jointwright.file.save;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import org.jspecify.annotations.Nullable;

/** Who may read a file: a temporary file is private, the file it becomes is not. */
final class FileRights {
  private FileRights() {}

  /** Gives {@code fresh} the rights of the file it takes the place of. */
  static void copy(Path from, Path fresh) throws IOException {
    PosixFileAttributeView old = view(from);
    PosixFileAttributeView now = view(fresh);
    if (old != null && now != null) {
      now.setPermissions(old.readAttributes().permissions());
    }
  }

  /** Gives a file that is new, and still empty, what its user wants of new files: the umask. */
  static void usual(Path fresh) throws IOException {
    // The system itself applies the umask, and only when a file is made without saying any rights.
    Files.delete(fresh);
    Files.createFile(fresh);
  }

  private static @Nullable PosixFileAttributeView view(Path file) {
    return Files.getFileAttributeView(file, PosixFileAttributeView.class);
  }
}
