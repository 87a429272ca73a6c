package org.jointwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RulesPageTest {
  private static final Path PAGE = Path.of("src/docs/RULES.md");
  private static final Path FRESH = Path.of("target/RULES.md");

  @Test
  void thePageSaysWhatTheClassesSay() throws IOException {
    String fresh = RulesPage.text();
    Files.createDirectories(FRESH.getParent());
    Files.writeString(FRESH, fresh);
    assertThat(House.text(PAGE).replace("\r", ""))
        .as("the page is out of date: copy %s over %s", FRESH, PAGE)
        .isEqualTo(fresh);
  }
}
