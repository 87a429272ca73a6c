package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command that takes a plan takes a sheet of it, and none writes over the sheet. */
class SheetAsPlanTest {
  @TempDir private static Path printed;
  @TempDir private Path folder;

  private static String laid;

  @BeforeAll
  static void print() throws IOException {
    laid = printed.resolve("pad.jointwright.json").toString();
    Run.of("joint", "samples/shed-pad-with-a-drain.jointwright.json", "-o", laid);
    assertThat(Run.of("sheet", laid, "-o", printed.toString()).code()).isZero();
  }

  private static String sheet(String ending) throws IOException {
    try (var files = Files.list(printed)) {
      return files.map(Path::toString).filter(f -> f.endsWith(ending)).findFirst().orElseThrow();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"-sheet.svg", "-sheet.pdf"})
  void commandsSayOfASheetWhatTheySayOfItsPlan(String ending) throws IOException {
    String sheet = sheet(ending);
    assertThat(Run.of("check", sheet, "--json")).isEqualTo(Run.of("check", laid, "--json"));
    assertThat(Run.of("order", sheet, "--json")).isEqualTo(Run.of("order", laid, "--json"));
    assertThat(Run.of("joint", sheet)).isEqualTo(Run.of("joint", laid));
  }

  @Test
  void aSheetComesThroughStandardInputToo() throws IOException {
    String svg = Files.readString(Path.of(sheet(".svg")));
    assertThat(Run.fed(svg, "check", "-")).isEqualTo(Run.of("check", laid));
  }

  @Test
  void aSheetPrintedFromASheetIsTheSame() throws IOException {
    Path first = Path.of(sheet(".pdf"));
    assertThat(Run.of("sheet", first.toString(), "-o", folder.toString()).code()).isZero();
    assertThat(folder.resolve(first.getFileName())).hasSameBinaryContentAs(first);
  }

  @Test
  void aSheetIsNotWrittenOver() throws IOException {
    for (String ending : new String[] {".svg", ".pdf"}) {
      Path sheet = Path.of(sheet(ending));
      byte[] before = Files.readAllBytes(sheet);
      Run run = Run.of("joint", sheet.toString(), "--in-place");
      assertThat(run.code()).isEqualTo(Outcome.USAGE);
      assertThat(run.error()).contains("would write over the sheet");
      Run onto = Run.of("joint", sheet.toString(), "-o", sheet.toString());
      assertThat(onto.code()).isEqualTo(Outcome.USAGE);
      assertThat(onto.error()).contains("Name a plan file").doesNotContain("--in-place");
      Run beside = Run.of("sheet", sheet.toString(), "-o", sheet.getParent().toString());
      assertThat(beside.code()).isEqualTo(Outcome.NOT_WRITTEN);
      assertThat(beside.error()).contains("over what was printed", "-o");
      assertThat(Files.readAllBytes(sheet)).isEqualTo(before);
    }
  }

  @Test
  void whatIsWrongInsideIsSaidWithItsPlace() throws IOException {
    String svg = Files.readString(Path.of(sheet(".svg"))).replace("\"slabs\"", "\"slab\"");
    Path bad = Files.writeString(folder.resolve("bad.svg"), svg);
    Run run = Run.of("check", bad.toString());
    assertThat(run.code()).isEqualTo(Outcome.REFUSED);
    assertThat(run.error()).contains("bad.svg: metadata.plan", "slabs").doesNotContain("Exception");
  }

  @Test
  void aSheetAloneIsNoCommand() {
    assertThat(Run.of("drive-cut-sheet.svg").error()).contains("design drive-cut-sheet.svg");
  }
}
