package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Truncated, hostile and absurd plans: refused with place and remedy, and nothing is written. */
class BadPlansTest {
  private static final Path BAD = Path.of("src/test/resources/cases/bad");

  @TempDir private Path folder;

  /** What is expected of a file: its name, and what the message must hold. */
  record Expected(String name, List<String> pieces) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Expected> expected() throws IOException {
    return Files.readAllLines(BAD.resolve("expected.txt")).stream()
        .filter(l -> !l.startsWith("#"))
        .map(l -> Arrays.asList(l.split(" \\| ")))
        .map(l -> new Expected(l.getFirst(), l.subList(1, l.size())))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("expected")
  void badPlanIsRefusedWithPlaceAndRemedy(Expected expected) {
    refused(BAD.resolve(expected.name() + ".json"), expected.pieces());
  }

  @Test
  void everyFileIsExpectedToFail() throws IOException {
    try (Stream<Path> files = Files.list(BAD)) {
      assertThat(
              files
                  .map(f -> f.getFileName().toString())
                  .filter(n -> n.endsWith(".json"))
                  .map(n -> n.replace(".json", "")))
          .containsExactlyInAnyOrderElementsOf(expected().stream().map(Expected::name).toList());
    }
  }

  @Test
  void fileOfMoreThanSixteenMegabytesIsRefused() throws IOException {
    Path file = folder.resolve("big.json");
    Files.write(file, " ".repeat(17 * 1024 * 1024).getBytes(StandardCharsets.US_ASCII));
    refused(file, List.of("larger than 16 MB"));
  }

  @Test
  void tooManyVerticesAreRefused() throws IOException {
    String zigzag = "[0, 0], [1, 0], ".repeat(60_000);
    String joint = "{\"kind\": \"isolation\", \"path\": [" + zigzag + "[2, 0]]}";
    refused(plan("[[0, 0], [20, 0], [20, 20]]", joint), List.of("more than 100,000 vertices"));
  }

  @Test
  void ringOfTooManyVerticesIsRefused() throws IOException {
    String ring = String.join(", ", Collections.nCopies(5_001, "[1, 2]"));
    refused(plan("[" + ring + "]", ""), List.of("slabs[0].outline", "5,000 is the most"));
  }

  @Test
  void folderIsRefused() {
    refused(folder, List.of("This is a folder"));
  }

  @Test
  void missingFileIsRefused() {
    refused(folder.resolve("none.json"), List.of("There is no such file"));
  }

  private Path plan(String outline, String joint) throws IOException {
    Path file = folder.resolve("made.json");
    return Files.writeString(
        file,
        """
        {"format": "jointwright-plan", "version": 1, "slabs": [
          {"id": "slab", "outline": %s, "joints": [%s]}]}
        """
            .formatted(outline, joint));
  }

  private void refused(Path file, List<String> pieces) {
    Path out = folder.resolve("out.json");
    Run run =
        assertTimeoutPreemptively(
            Duration.ofSeconds(20), () -> Run.of("joint", file.toString(), "-o", out.toString()));
    assertThat(run.code()).isEqualTo(Outcome.REFUSED);
    assertThat(run.out()).isEmpty();
    assertThat(run.error())
        .contains(file.toString())
        .contains(pieces)
        .doesNotContain("Exception", "\tat ", "org.jointwright");
    assertThat(out).doesNotExist();
    assertThat(folder).isDirectoryNotContaining("glob:**.part");
  }
}
