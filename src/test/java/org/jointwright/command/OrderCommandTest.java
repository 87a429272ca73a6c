package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan takes, as the command line says it and as its sheet prints it. */
class OrderCommandTest {
  private static final String SAMPLE = "samples/drive-approach-walk.jointwright.json";

  @Test
  void itSaysTheMixFirstAndThenWhatIsBought() {
    Run run = Run.of("order", SAMPLE);
    assertThat(run.code()).isEqualTo(0);
    assertThat(run.out()).startsWith("3,500 psi, air 6 % ± 1.5");
    assertThat(run.out()).contains("To order: 13 yd³", "Base stone to order", "Stakes: 56");
    assertThat(run.out()).doesNotContain("Concrete in Practice");
    assertThat(run.error()).contains("no joints yet");
  }

  @Test
  void howIsSaidOnRequest() {
    assertThat(Run.of("order", SAMPLE, "--how").out())
        .contains("drive: 666 ft² × 4″ = 8.22 yd³", "NRMCA Concrete in Practice 8");
  }

  @Test
  void itSpeaksSpanishAndMetres() {
    Run run = Run.of("order", SAMPLE, "--lang", "es", "--units", "m");
    assertThat(run.out()).startsWith("24 MPa, aire 6 % ± 1.5").contains("Por pedir: 10 m³");
  }

  @Test
  void programsGetFigures() {
    Run run = Run.of("order", SAMPLE, "--json");
    assertThat(run.out())
        .contains("\"item\": \"concrete\"", "\"amount\": 13", "\"unit\": \"yd3\"")
        .startsWith("{");
  }

  @Test
  void wrongWordsAreRefused() {
    assertThat(Run.of("order", SAMPLE, "--lang", "fr").code()).isEqualTo(2);
    assertThat(Run.of("order", "nowhere.json").code()).isEqualTo(3);
  }

  @Test
  void thePlantGetsItsSheet(@TempDir Path folder) throws Exception {
    Path laid = folder.resolve("laid.jointwright.json");
    assertThat(Run.of("joint", SAMPLE, "-o", laid.toString()).code()).isEqualTo(0);
    Run run = Run.of("sheet", laid.toString(), "-o", folder.toString(), "--for", "plant");
    assertThat(run.code()).isEqualTo(0);
    Path svg = folder.resolve("laid-order-sheet.svg");
    assertThat(Files.readString(svg)).contains("Order sheet", "13 yd³", "56");
    assertThat(Files.exists(folder.resolve("laid-cut-sheet.pdf"))).isFalse();
  }
}
