package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheets of every sample, as files that other programs open. */
class SampleSheetsTest {
  @TempDir private static Path folder;

  private static final Map<Path, List<File>> MADE = new HashMap<>();

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples"))) {
      return files.filter(f -> f.toString().endsWith(".jointwright.json")).sorted().toList();
    }
  }

  /** Made once for all that looks at them. */
  private static List<File> drawings(Path sample) {
    return MADE.computeIfAbsent(sample, SampleSheetsTest::made);
  }

  private static List<File> made(Path sample) {
    Run run = Run.of("welcome", sample.toString(), "-o", folder.toString());
    assertThat(run.code()).isZero();
    List<File> svg =
        run.out().lines().filter(f -> f.endsWith(".svg")).map(f -> Path.of(f).toFile()).toList();
    assertThat(svg).isNotEmpty();
    return svg;
  }

  @ParameterizedTest
  @MethodSource("samples")
  void drawingsAreWellFormedXml(Path sample) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    for (File svg : drawings(sample)) {
      // The parser ends with a fault at the first thing that is not well formed.
      var root = factory.newDocumentBuilder().parse(svg).getDocumentElement();
      assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(root.getElementsByTagName("text").getLength()).isPositive();
    }
  }

  @Test
  void xmllintFindsNoFaultInAnyWhereItIsInstalled() throws Exception {
    assumeThat(isInstalled()).as("xmllint is installed").isTrue();
    List<String> command = new ArrayList<>(List.of("xmllint", "--noout", "--nonet"));
    for (Path sample : samples()) {
      drawings(sample).forEach(svg -> command.add(svg.toString()));
    }
    Path said = folder.resolve("said");
    Process lint =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertThat(lint.waitFor()).as(Files.readString(said)).isZero();
  }

  private static boolean isInstalled() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(p -> Files.isExecutable(Path.of(p, "xmllint")));
  }

  @Test
  void papersAreKnownByCapitalsToo(@TempDir Path into) {
    Run run = Run.of("sheet", laid(), "--for", "plant", "--paper", "A4", "-o", into.toString());
    assertThat(run.code()).as(run.error()).isZero();
    assertThat(into.toFile().list()).isNotEmpty();
  }

  private static String laid() {
    return "src/test/resources/cases/laid/rect_drive_20x40_4in.json";
  }
}
