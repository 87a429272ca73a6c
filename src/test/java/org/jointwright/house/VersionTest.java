package org.jointwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class VersionTest {
  @Test
  void theProgramSaysTheVersionOfTheBuild() {
    String pom = House.text(Path.of("pom.xml"));
    String version = pom.replaceFirst("(?s).*?<version>([^<]*)</version>.*", "$1");
    assertThat(House.text(House.MAIN.resolve("org/jointwright/app/Program.java")))
        .contains("VERSION = \"" + version + "\"");
  }
}
