package org.jointwright.file.save;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SafeSaveTest {
  private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void writeTheVersionBefore() throws IOException {
    file = Files.writeString(folder.resolve("plan.json"), "old");
  }

  @Test
  void savingReplacesTheFileAndKeepsTheVersionBefore() throws IOException {
    SafeSave.saveWithBackup(file, NEW);
    assertThat(file).content().isEqualTo("new");
    assertThat(SafeSave.backupOf(file)).content().isEqualTo("old");
    assertThat(names().toList()).containsExactlyInAnyOrder("plan.json", "plan.json~");
  }

  @Test
  void savingTwiceKeepsTheVersionJustBefore() throws IOException {
    SafeSave.saveWithBackup(file, NEW);
    SafeSave.saveWithBackup(file, "newer".getBytes(StandardCharsets.UTF_8));
    assertThat(SafeSave.backupOf(file)).content().isEqualTo("new");
  }

  @Test
  void newFileHasNoBackup() throws IOException {
    Path fresh = folder.resolve("fresh.json");
    SafeSave.saveWithBackup(fresh, NEW);
    assertThat(fresh).content().isEqualTo("new");
    assertThat(SafeSave.backupOf(fresh)).doesNotExist();
  }

  @Test
  void saveThatFailsLeavesTheOldFileWhole() throws IOException {
    // A folder where the backup should go makes the save fail after the new text is on the disk.
    Files.createDirectories(SafeSave.backupOf(file).resolve("in-the-way"));
    assertThatThrownBy(() -> SafeSave.saveWithBackup(file, NEW)).isInstanceOf(IOException.class);
    assertThat(file).content().isEqualTo("old");
    assertThat(names().toList()).containsExactlyInAnyOrder("plan.json", "plan.json~");
  }

  @Test
  void folderInTheWayIsRefused() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("taken"));
    assertThatThrownBy(() -> SafeSave.saveWithBackup(taken, NEW)).isInstanceOf(IOException.class);
    assertThat(taken).isEmptyDirectory();
  }

  @Test
  void severalFilesAreWrittenOrNone() throws IOException {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(folder.resolve("a.svg"), NEW);
    files.put(Files.createDirectory(folder.resolve("b.svg")), NEW);
    assertThatThrownBy(() -> SafeSave.saveAll(files, f -> false)).isInstanceOf(IOException.class);
    assertThat(names().toList()).containsExactlyInAnyOrder("plan.json", "b.svg");
  }

  @Test
  void savingThroughALinkWritesTheFileItself() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
    SafeSave.saveWithBackup(link, NEW);
    assertThat(link).isSymbolicLink();
    assertThat(file).content().isEqualTo("new");
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no such rights")
  void newFileHasTheRightsOfAnyNewFile() throws IOException {
    Path fresh = folder.resolve("fresh.json");
    SafeSave.saveAll(Map.of(fresh, NEW), f -> true);
    assertThat(Files.getPosixFilePermissions(fresh)).isEqualTo(Files.getPosixFilePermissions(file));
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no such rights")
  void savingKeepsTheRightsOfTheFileAndOfItsBackup() throws IOException {
    Set<PosixFilePermission> rights = PosixFilePermissions.fromString("rw-rw----");
    Files.setPosixFilePermissions(file, rights);
    SafeSave.saveWithBackup(file, NEW);
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(rights);
    assertThat(Files.getPosixFilePermissions(SafeSave.backupOf(file))).isEqualTo(rights);
  }

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList().stream();
    }
  }

  @Test
  void ofSeveralFilesWhatIsPreciousKeepsAnotherVersionBesideIt() throws IOException {
    Path precious = Files.writeString(folder.resolve("set.pdf"), "old");
    Path other = Files.writeString(folder.resolve("set.png"), "old");
    for (int i = 0; i < 2; i++) {
      SafeSave.saveAll(Map.of(precious, NEW, other, NEW), f -> f.equals(precious));
      // The second time nothing else is there: the version before it stays.
      assertThat(SafeSave.backupOf(precious)).hasContent("old");
    }
    assertThat(precious).hasContent("new");
    assertThat(SafeSave.backupOf(other)).doesNotExist();
  }
}
