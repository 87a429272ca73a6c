package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.app.PlanFiles;
import org.jointwright.file.PlanReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The program killed while somebody edits, and started again. */
@ExtendWith(NeedsWindow.class)
class KilledTest {
  /** Nothing older than this may be lost. */
  private static final Duration MOST_LOST = Duration.ofSeconds(5);

  /** Edited for longer than that, so that something older is there to be lost. */
  private static final Duration EDITED = MOST_LOST.plusSeconds(4);

  private static final Pattern STEP = Pattern.compile("step (\\d+)");

  @TempDir private Path folder;

  private record Done(int step, long when) {}

  private Process start(String mode, Path plan) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx512m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("--enable-native-access=ALL-UNNAMED", "-Djava.awt.headless=true"));
    command.addAll(List.of("-Dglass.platform=Headless", "-Dprism.order=sw"));
    command.add("-Djointwright.folder=" + folder.resolve("own"));
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path"), WholeProgram.class.getName()));
    command.addAll(List.of(mode, "design", plan.toString()));
    Path said = folder.resolve(mode + "-said.txt");
    return new ProcessBuilder(command).redirectError(said.toFile()).start();
  }

  @Test
  void nothingOlderThanAFewSecondsIsLostAndTheFileIsWhole() throws Exception {
    Path plan = folder.resolve("mine.jointwright.json");
    Files.writeString(
        plan,
        "{\"format\": \"jointwright-plan\", \"version\": 1, \"job\": {\"name\": \"step 0\"},"
            + " \"slabs\": [{\"id\": \"pad\", \"outline\": [[0, 0], [8, 0], [8, 8], [0, 8]]}]}");
    List<Done> done = new ArrayList<>();
    Process first = start("edit", plan);
    long killed;
    try (BufferedReader said = first.inputReader()) {
      do {
        String line = said.readLine();
        assertThat(line)
            .as(() -> "after " + done + " it ended by itself: " + ended(first) + said("edit"))
            .isNotNull();
        done.add(new Done(Integer.parseInt(line), System.nanoTime()));
      } while (done.getLast().when() - done.getFirst().when() < EDITED.toNanos());
      killed = System.nanoTime();
    } finally {
      // Not asked to end but struck down: on most systems kill -9.
      first.destroyForcibly().waitFor();
    }
    int old =
        done.stream()
            .filter(d -> killed - d.when() >= MOST_LOST.toNanos())
            .mapToInt(Done::step)
            .max()
            .orElseThrow();
    assertThat(PlanFiles.open(plan)).as("the file").isInstanceOf(PlanReading.ReadPlan.class);
    String name = ((PlanReading.ReadPlan) PlanFiles.open(plan)).plan().job().name();
    assertThat(step(name) % WholeProgram.SAVES).as(name).isZero();
    String title = titleAfterwards(plan);
    assertThat(step(title)).as("steps were %s", done).isGreaterThanOrEqualTo(old);
    assertThat(title.contains("not saved")).isEqualTo(step(title) != step(name));
  }

  private String titleAfterwards(Path plan) throws Exception {
    Process second = start("look", plan);
    try (BufferedReader said = second.inputReader()) {
      String title = said.readLine();
      assertThat(title).as(() -> "it ended by itself: " + ended(second) + said("look")).isNotNull();
      return title;
    } finally {
      second.destroyForcibly().waitFor();
    }
  }

  private static String ended(Process process) {
    return process.onExit().join().exitValue() + " ";
  }

  private String said(String mode) {
    try {
      return Files.readString(folder.resolve(mode + "-said.txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }

  private static int step(String text) {
    Matcher m = STEP.matcher(text);
    assertThat(m.find()).as(text).isTrue();
    return Integer.parseInt(m.group(1));
  }
}
