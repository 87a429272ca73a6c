package org.jointwright.app.work;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.save.SafeSave;
import org.jspecify.annotations.Nullable;

/**
 * Where the work of one window is kept safe, apart from the user's file. Each running window holds
 * a place of its own by a lock, which the system takes away however the program ends; so work that
 * lies in a place that nobody holds was left by a window that did not come to its end.
 */
public final class WorkPlace implements AutoCloseable {
  /** As many windows as nobody has open at once. */
  private static final int MOST = 64;

  private final Path file;
  private final FileChannel lock;
  private Optional<Work> left = Optional.empty();
  private Optional<Path> unread = Optional.empty();
  private int waiting;

  private WorkPlace(Path file, FileChannel lock) {
    this.file = file;
    this.lock = lock;
  }

  /**
   * Takes a place for a window: one where work was left, the latest first, else an empty one.
   *
   * @param folder where the program keeps what is its own; made where there is none
   * @param asked the file that the window is to show; then only work on that file comes back, and
   *     other work waits for a window that asks for nothing
   * @throws IOException when the folder cannot be used
   */
  public static WorkPlace take(Path folder, Optional<Path> asked) throws IOException {
    Files.createDirectories(folder);
    List<WorkPlace> free = new ArrayList<>();
    boolean isEmptyThere = false;
    for (int i = 1; i <= MOST && !isEmptyThere; i++) {
      WorkPlace place = held(folder, i);
      if (place != null) {
        free.add(place);
        // Places are taken from the first on: behind an untouched one there is nothing.
        isEmptyThere = !place.hasWork() && !Files.exists(folder.resolve(name(i + 1) + ".lock"));
      }
    }
    free.forEach(WorkPlace::readLeft);
    Optional<WorkPlace> chosen =
        free.stream()
            .filter(p -> p.left.filter(w -> isAskedFor(w, asked)).isPresent())
            .max(Comparator.comparing(WorkPlace::time))
            .or(() -> free.stream().filter(p -> !p.hasWork()).findFirst());
    List<WorkPlace> others = free.stream().filter(p -> !Optional.of(p).equals(chosen)).toList();
    others.forEach(WorkPlace::close);
    WorkPlace place = chosen.orElseThrow(() -> new IOException("no place is free in " + folder));
    place.waiting = (int) others.stream().filter(p -> p.left.isPresent()).count();
    return place;
  }

  private static boolean isAskedFor(Work work, Optional<Path> asked) {
    return asked.isEmpty() || work.file().filter(f -> isSame(f, asked.get())).isPresent();
  }

  private static @Nullable WorkPlace held(Path folder, int number) throws IOException {
    Path lockFile = folder.resolve(name(number) + ".lock");
    FileChannel channel =
        FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      // Another window of this very program.
    } finally {
      if (lock == null) {
        channel.close();
      }
    }
    return lock == null ? null : new WorkPlace(folder.resolve(name(number) + ".txt"), channel);
  }

  private static String name(int number) {
    return "work-" + number;
  }

  private boolean hasWork() {
    return Files.exists(file);
  }

  private FileTime time() {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }

  private static boolean isSame(Path a, Path b) {
    try {
      return Files.isSameFile(a, b);
    } catch (IOException e) {
      return a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
    }
  }

  /** What cannot be read is put aside, never thrown away. */
  private void readLeft() {
    if (!hasWork()) {
      return;
    }
    try {
      left = WorkText.read(Files.readString(file));
      if (left.isEmpty()) {
        Path aside = file.resolveSibling(file.getFileName() + ".unread");
        Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
        unread = Optional.of(aside);
      }
    } catch (IOException e) {
      unread = Optional.of(file);
    }
  }

  /** The work that a window left here that did not come to its end. */
  public Optional<Work> left() {
    return left;
  }

  /** Where work lies that was left here and cannot be read. */
  public Optional<Path> unread() {
    return unread;
  }

  /** How much other work waits for a window that asks for nothing. */
  public int waiting() {
    return waiting;
  }

  /**
   * Keeps work safe: whole, and on the disk when this returns.
   *
   * @throws IOException when it cannot be written; what was kept before is then still there
   */
  public void keep(Work work) throws IOException {
    SafeSave.save(file, WorkText.write(work).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Throws away what is kept: it stands in the user's file, or the user gave it up.
   *
   * @throws IOException when it cannot be thrown away
   */
  public void clear() throws IOException {
    Files.deleteIfExists(file);
  }

  /** Gives the place back; what is kept stays in it. */
  @Override
  public void close() {
    try {
      lock.close();
    } catch (IOException e) {
      // The system takes the lock away when the program ends.
    }
  }
}
