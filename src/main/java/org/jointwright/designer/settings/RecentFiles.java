package org.jointwright.designer.settings;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.Saving;

/**
 * The plans that were opened or saved lately, the latest first; remembered in a small text file, an
 * address on each line.
 *
 * @param file that file; empty where nothing is remembered
 */
public record RecentFiles(Optional<Path> file) {
  /** Remembers nothing. */
  public static final RecentFiles NONE = new RecentFiles(Optional.empty());

  /** More than these nobody looks through. */
  private static final int MOST = 8;

  private static final String NAME = "recent.txt";

  /** The plans of this user. */
  public static RecentFiles ofUser() {
    return in(OwnFolder.path());
  }

  /** The plans remembered in a folder, which is made when there is something to remember. */
  public static RecentFiles in(Path folder) {
    return new RecentFiles(Optional.of(folder.resolve(NAME)));
  }

  /** The plans, those that are gone from the disk as well. */
  public List<Path> all() {
    List<Path> all = new ArrayList<>();
    for (String line : lines()) {
      try {
        all.add(Path.of(URI.create(line)));
      } catch (IllegalArgumentException | FileSystemNotFoundException e) {
        // A line that somebody spoilt costs that plan’s name, no more.
      }
    }
    return all.stream().distinct().limit(MOST).toList();
  }

  private List<String> lines() {
    try {
      return file.filter(Files::isRegularFile).isPresent()
          ? Files.readAllLines(file.get())
          : List.of();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** Remembers a plan as the latest. */
  public void add(Path plan) {
    Path whole = plan.toAbsolutePath().normalize();
    List<Path> all = new ArrayList<>(all());
    all.remove(whole);
    all.addFirst(whole);
    write(all);
  }

  /** Forgets a plan. */
  public void forget(Path plan) {
    List<Path> all = new ArrayList<>(all());
    if (all.remove(plan.toAbsolutePath().normalize())) {
      write(all);
    }
  }

  private void write(List<Path> all) {
    StringBuilder text = new StringBuilder();
    all.stream().limit(MOST).forEach(p -> text.append(p.toUri()).append('\n'));
    file.ifPresent(f -> Saving.remember(f, text.toString()));
  }
}
