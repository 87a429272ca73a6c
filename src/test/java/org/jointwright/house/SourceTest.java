package org.jointwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sizes, names and package docs of the source files. */
class SourceTest {
  private static final int LONGEST_FILE = 500;
  private static final int MEDIAN_OF_MAIN = 100;
  private static final int MOST_FILES_IN_A_PACKAGE = 35;
  private static final Pattern EMPTY_NAME =
      Pattern.compile(".*(Util|Utils|Utility|Utilities|Manager|Helper|Helpers|Tools)\\.java");
  private static final Pattern LEFT_OPEN = Pattern.compile("\\b(TODO|FIXME|XXX)\\b|@Disabled\\b");

  private static List<Path> all() {
    return Stream.concat(
            House.files(House.MAIN, ".java").stream(), House.files(House.TEST, ".java").stream())
        .toList();
  }

  @Test
  void noFileIsTooLongToReadAtOneSitting() {
    assertThat(all().stream().filter(f -> House.lines(f).size() > LONGEST_FILE))
        .as("over %d lines", LONGEST_FILE)
        .isEmpty();
  }

  @Test
  void theUsualFileIsShort() {
    List<Integer> sizes =
        House.files(House.MAIN, ".java").stream().map(f -> House.lines(f).size()).sorted().toList();
    assertThat(sizes.get(sizes.size() / 2)).as("median lines").isLessThanOrEqualTo(MEDIAN_OF_MAIN);
  }

  @Test
  void aPackageIsSmallEnoughToKnow() {
    List<String> crowded = new ArrayList<>();
    for (Path info : House.files(House.MAIN, "package-info.java")) {
      Path folder = info.getParent();
      long files =
          House.files(folder, ".java").stream().filter(f -> f.getParent().equals(folder)).count();
      if (files > MOST_FILES_IN_A_PACKAGE) {
        crowded.add(folder + ": " + files);
      }
    }
    assertThat(crowded).as("split it and name the parts for what they know").isEmpty();
  }

  @Test
  void everyNameSaysWhatItKnows() {
    assertThat(all().stream().filter(f -> EMPTY_NAME.matcher(f.getFileName().toString()).matches()))
        .as("a class named so attracts whatever has no home")
        .isEmpty();
  }

  @Test
  void everyPackageIsDescribedAndNullMarked() {
    List<String> bare = new ArrayList<>();
    for (Path file : House.files(House.MAIN, ".java")) {
      Path info = file.resolveSibling("package-info.java");
      if (!Files.exists(info)
          || !House.text(info).contains("@NullMarked")
          || !House.text(info).startsWith("/**")) {
        bare.add(file.getParent().toString());
      }
    }
    assertThat(bare.stream().distinct()).as("packages without doc or @NullMarked").isEmpty();
  }

  @Test
  void nothingIsLeftForLater() {
    List<String> found = new ArrayList<>();
    for (Path file : all()) {
      if (!file.endsWith("SourceTest.java") && LEFT_OPEN.matcher(House.text(file)).find()) {
        found.add(file.toString());
      }
    }
    assertThat(found).isEmpty();
  }
}
