package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.designer.pane.Board;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Of a window that is gone nothing is left: a day’s work is many windows, opened and closed. */
@ExtendWith(NeedsWindow.class)
class GoneWindowTest {
  private static final int PATIENCE = 100;

  @Test
  void threadsAndWatchersOfAGoneWindowEnd() throws InterruptedException {
    Set<Thread> before = Thread.getAllStackTraces().keySet();
    List<WeakReference<Board>> boards = List.of(gone(), gone(), gone());
    for (int i = 0; i < PATIENCE && !left(before).isEmpty(); i++) {
      Thread.sleep(50);
    }
    assertThat(left(before)).isEmpty();
    for (int i = 0; i < PATIENCE && boards.getFirst().get() != null; i++) {
      System.gc();
      Thread.sleep(20);
    }
    // The toolkit itself may hold the newest; all that went before must be gone.
    assertThat(boards.getFirst().get()).isNull();
  }

  private static WeakReference<Board> gone() {
    try (Rig rig = new Rig()) {
      return new WeakReference<>(rig.designer().board());
    }
  }

  private static Set<String> left(Set<Thread> before) {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(t -> t.isAlive() && !before.contains(t))
        .map(Thread::getName)
        .filter(Set.of("laying", "files", "reasons", "choices", "nearness", "fixing")::contains)
        .collect(Collectors.toSet());
  }
}
