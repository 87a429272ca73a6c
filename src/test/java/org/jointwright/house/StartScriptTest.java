package org.jointwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script in a folder of its own, with JDKs that only say who they are. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the script is for the other systems")
class StartScriptTest {
  private static final Path SCRIPT = Path.of("src/main/dist/bin/jointwright");

  @TempDir Path folder;
  private Path script;

  private record Answer(int exit, String out, String err) {}

  @BeforeEach
  void layOutTheFolder() throws IOException {
    Path bin = Files.createDirectories(folder.resolve("a folder with spaces/bin"));
    Files.createDirectories(folder.resolve("a folder with spaces/lib"));
    script = Files.copy(SCRIPT, bin.resolve("jointwright"), StandardCopyOption.COPY_ATTRIBUTES);
  }

  /** A java that prints its home's name and its arguments, one a line. */
  private Path jdk(String name, String version) throws IOException {
    Path home = folder.resolve(name);
    Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho " + name + "\nprintf '%s\\n' \"$@\"\nexit 3\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    return home;
  }

  private Answer run(Path start, String javaHome, String path, String... arguments)
      throws Exception {
    List<String> command = new ArrayList<>(List.of(start.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put("JAVA_HOME", javaHome);
    builder.environment().put("PATH", path + ":/usr/bin:/bin");
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    int exit = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
    return new Answer(exit, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err));
  }

  @Test
  void javaHomeIsTakenFirstAndGetsTheArgumentsAsTheyAre() throws Exception {
    Path chosen = jdk("chosen", "25.0.3");
    Answer answer =
        run(script, chosen.toString(), jdk("other", "26") + "/bin", "joint", "my plan.json", "*");
    assertThat(answer.out())
        .startsWith("chosen\n")
        .endsWith("org.jointwright.Main\njoint\nmy plan.json\n*\n");
    assertThat(answer.out()).contains("a folder with spaces/lib/*\n");
    assertThat(answer.exit()).isEqualTo(3);
    assertThat(answer.err()).isEmpty();
  }

  @Test
  void keptClassesAreHandedToTheJdkWhereThereAreAny() throws Exception {
    Path chosen = jdk("chosen", "25.0.3");
    assertThat(run(script, chosen.toString(), "/nowhere").out()).doesNotContain("AOTCache");
    Files.createFile(folder.resolve("a folder with spaces/jointwright.aot"));
    Answer answer = run(script, chosen.toString(), "/nowhere", "joint", "my plan.json");
    assertThat(answer.out())
        .contains("\n-XX:AOTCache=", "a folder with spaces/lib/../jointwright.aot\n")
        .endsWith("org.jointwright.Main\njoint\nmy plan.json\n");
  }

  @Test
  void shortWorkIsLeftToTheQuickCompilerAndALongSearchIsNot() throws Exception {
    String jdk = jdk("chosen", "25.0.3").toString();
    String quick = "\n-XX:TieredStopAtLevel=1\n";
    assertThat(run(script, jdk, "/nowhere", "sheet", "my plan.json", "-o", "a b").out())
        .contains(quick)
        .endsWith("org.jointwright.Main\nsheet\nmy plan.json\n-o\na b\n");
    assertThat(run(script, jdk, "/nowhere", "joint", "plan.json").out())
        .doesNotContain(quick, "Tier4");
    assertThat(run(script, jdk, "/nowhere").out())
        .contains("\n-XX:Tier4InvocationThreshold=50000\n")
        .doesNotContain(quick);
  }

  @Test
  void anOlderJavaHomeIsPassedOverForOneOnThePath() throws Exception {
    Answer answer = run(script, jdk("old", "24.0.2").toString(), jdk("young", "26") + "/bin");
    assertThat(answer.out()).startsWith("young\n");
  }

  @Test
  void aJavaHomeThatIsNotThereIsPassedOver() throws Exception {
    Answer answer = run(script, folder.resolve("absent").toString(), jdk("young", "25") + "/bin");
    assertThat(answer.out()).startsWith("young\n");
  }

  @Test
  void aSymbolicLinkFindsTheFolderBehindIt() throws Exception {
    Path near = Files.createSymbolicLink(folder.resolve("near"), script);
    Path far = Files.createSymbolicLink(folder.resolve("far"), Path.of("near"));
    Answer answer = run(far, jdk("chosen", "25").toString(), "/nowhere");
    assertThat(answer.out()).contains("a folder with spaces/lib/*\n");
  }

  @Test
  void noJdkInThePlacesOfTheScriptIsSaidInOneLine() throws Exception {
    // The script with no places of its own to look in, so that this machine's JDKs do not matter.
    String text = Files.readString(script);
    String shut =
        text.replaceAll("(?s)for home in /usr/lib/jvm.*?; do", "for home in /nowhere/*; do");
    assertThat(shut).isNotEqualTo(text);
    Files.writeString(script, shut);
    assertNoJdk(run(script, jdk("old", "24.0.2").toString(), jdk("older", "17") + "/bin"));
  }

  private static void assertNoJdk(Answer answer) {
    assertThat(answer.exit()).isEqualTo(70);
    assertThat(answer.out()).isEmpty();
    assertThat(answer.err()).hasLineCount(1).contains("no JDK 25", "JAVA_HOME");
  }

  @Test
  void aMissingLibraryFolderIsSaidInOneLine() throws Exception {
    Files.delete(folder.resolve("a folder with spaces/lib"));
    Answer answer = run(script, jdk("chosen", "25").toString(), "/nowhere");
    assertThat(answer.exit()).isEqualTo(70);
    assertThat(answer.err()).hasLineCount(1).contains("mvn -q -DskipTests package");
  }
}
