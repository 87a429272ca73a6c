package org.jointwright.file.save;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Writes files whole or not at all: to a temporary file beside the target, flushed to the disk, the
 * version before kept as {@code NAME~}, then moved into place in one step. Whenever it stops, the
 * target is the old version or the new one.
 */
public final class SafeSave {
  private SafeSave() {}

  /**
   * Writes a file, the version before kept beside it.
   *
   * @throws IOException when it cannot be written; the file is then as it was
   */
  public static void saveWithBackup(Path target, byte[] bytes) throws IOException {
    save(target, bytes, true);
  }

  /**
   * Writes a file that can be made again, without a backup.
   *
   * @throws IOException when it cannot be written; the file is then as it was
   */
  public static void save(Path target, byte[] bytes) throws IOException {
    save(target, bytes, false);
  }

  /**
   * Writes several files that can be made again. None is moved into place before all are on the
   * disk.
   *
   * @param isPrecious of which of them another version that is there is kept as {@link #backupOf}
   * @throws IOException when one cannot be written
   */
  public static void saveAll(Map<Path, byte[]> files, Predicate<Path> isPrecious)
      throws IOException {
    Map<Path, Path> fresh = new LinkedHashMap<>();
    try {
      for (Map.Entry<Path, byte[]> file : files.entrySet()) {
        Path target = targetOf(file.getKey());
        fresh.put(target, written(target, file.getValue()));
      }
      for (Map.Entry<Path, Path> file : fresh.entrySet()) {
        boolean isOther =
            Files.exists(file.getKey()) && Files.mismatch(file.getKey(), file.getValue()) >= 0;
        if (isOther && isPrecious.test(file.getKey())) {
          keepBefore(file.getKey());
        }
        moveOver(file.getValue(), file.getKey());
      }
    } finally {
      for (Path left : fresh.values()) {
        Files.deleteIfExists(left);
      }
    }
  }

  /** Where the version before is kept. */
  public static Path backupOf(Path target) {
    return target.resolveSibling(target.getFileName() + "~");
  }

  private static void save(Path named, byte[] bytes, boolean backup) throws IOException {
    if (Files.exists(named) && !Files.isRegularFile(named) && !Files.isDirectory(named)) {
      // A pipe or a device: there is nothing to replace, and replacing it would break it.
      Files.write(named, bytes, StandardOpenOption.WRITE);
      return;
    }
    Path target = targetOf(named);
    Path fresh = written(target, bytes);
    try {
      if (backup && Files.exists(target)) {
        keepBefore(target);
      }
      moveOver(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private static Path targetOf(Path named) throws IOException {
    // Through a link the file itself is written, so that the link stays one.
    Path target = Files.exists(named) ? named.toRealPath() : named.toAbsolutePath();
    if (target.getParent() == null || Files.isDirectory(target)) {
      throw new IOException("a folder is in the way: " + target);
    }
    if (Files.exists(target) && !Files.isWritable(target)) {
      throw new IOException("the file may not be written: " + target);
    }
    return target;
  }

  /** A whole copy of what is to be, beside the target and on the disk. */
  private static Path written(Path target, byte[] bytes) throws IOException {
    Path fresh = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".part");
    try {
      boolean isNew = !Files.exists(target);
      if (isNew) {
        FileRights.usual(fresh);
      }
      write(fresh, bytes);
      if (!isNew) {
        FileRights.copy(target, fresh);
      }
      return fresh;
    } catch (IOException e) {
      Files.deleteIfExists(fresh);
      throw e;
    }
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  /** The backup is a whole file at every moment too. */
  private static void keepBefore(Path target) throws IOException {
    Path copy = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".part");
    try {
      Files.copy(
          target, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
      moveOver(copy, backupOf(target));
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  private static void moveOver(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
