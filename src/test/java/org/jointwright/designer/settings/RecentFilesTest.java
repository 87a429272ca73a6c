package org.jointwright.designer.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plans that were opened lately. */
class RecentFilesTest {
  @TempDir private Path folder;

  private Path plan(int number) {
    return folder.resolve("plan %d.json".formatted(number)).toAbsolutePath();
  }

  private RecentFiles recent() {
    return RecentFiles.in(folder.resolve("own"));
  }

  @Test
  void theLatestStandsFirstAndOnceOnly() {
    recent().add(plan(1));
    recent().add(plan(2));
    recent().add(folder.resolve(".").resolve("plan 1.json"));
    assertThat(recent().all()).containsExactly(plan(1), plan(2));
  }

  @Test
  void onlySoManyAreRemembered() {
    IntStream.rangeClosed(1, 20).forEach(i -> recent().add(plan(i)));
    assertThat(recent().all()).hasSize(8).startsWith(plan(20)).endsWith(plan(13));
  }

  @Test
  void oneThatIsForgottenIsGone() {
    recent().add(plan(1));
    recent().add(plan(2));
    recent().forget(plan(1));
    recent().forget(plan(7));
    assertThat(recent().all()).containsExactly(plan(2));
  }

  @Test
  void aSpoiltListCostsItsSpoiltLinesOnly() throws IOException {
    recent().add(plan(1));
    Path list = folder.resolve("own").resolve("recent.txt");
    Files.writeString(list, "no address\n" + plan(3).toUri() + "\nhttp://x/\n\n");
    assertThat(recent().all()).containsExactly(plan(3));
  }

  @Test
  void nowhereNothingIsRemembered() {
    RecentFiles.NONE.add(plan(1));
    assertThat(RecentFiles.NONE.all()).isEqualTo(List.of());
    Path inTheWay = folder.resolve("own");
    assertThat(inTheWay).doesNotExist();
  }
}
