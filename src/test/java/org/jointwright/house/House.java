package org.jointwright.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The program as the tests of its build see it: its classes and its source files. */
final class House {
  static final String ROOT = "org.jointwright";
  static final Path MAIN = Path.of("src/main/java");
  static final Path TEST = Path.of("src/test/java");
  static final Path WORDS = Path.of("src/main/resources/org/jointwright/text");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  private House() {}

  /** The program's own classes, without tests. */
  static JavaClasses classes() {
    return CLASSES;
  }

  /** Every file under {@code folder} whose name ends so, in order; none when it does not exist. */
  static List<Path> files(Path folder, String ending) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> lines(Path file) {
    return text(file).lines().toList();
  }
}
