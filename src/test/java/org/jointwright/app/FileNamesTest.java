package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.jointwright.plan.Job;
import org.jointwright.plan.Kept;
import org.junit.jupiter.api.Test;

class FileNamesTest {
  private static Job named(String name) {
    return new Job(name, "", "", "", "", "", Kept.NOTHING);
  }

  @Test
  void sheetsAreCalledAfterTheJobElseAfterItsFile() {
    Optional<Path> file = Optional.of(Path.of("plans", "site.jointwright.json"));
    assertThat(Sheets.stem(named("North Lot 7"), file)).isEqualTo("North Lot 7");
    assertThat(Sheets.stem(named(" "), file)).isEqualTo("site");
    assertThat(Sheets.stem(named(""), Optional.empty())).isEmpty();
  }

  @Test
  void whatNoFileMayBeCalledIsLeftOut() {
    assertThat(FileNames.of(named("../a: b/c?"))).contains("a bc");
    assertThat(FileNames.of(named("?!/"))).isEmpty();
    assertThat(FileNames.of(named("Entrada Peña"))).contains("Entrada Peña");
  }
}
