package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Outside;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What takes long is shown after a while, and can be stopped. */
@ExtendWith(NeedsWindow.class)
class BusyInTheWindowTest {
  @TempDir private Path folder;
  private final AtomicBoolean isSlow = new AtomicBoolean();
  private final AtomicBoolean hasFirst = new AtomicBoolean();
  private CountDownLatch stopped = new CountDownLatch(1);
  private Rig rig;

  @BeforeEach
  void open() {
    Outside real = new Program();
    Outside slow =
        (Outside)
            Proxy.newProxyInstance(
                Outside.class.getClassLoader(),
                new Class<?>[] {Outside.class},
                (proxy, method, arguments) -> {
                  boolean isLong =
                      switch (method.getName()) {
                        case "work", "sheets" -> isSlow.get();
                        case "first" -> isSlow.get() && !hasFirst.get();
                        default -> false;
                      };
                  if (isLong) {
                    untilStopped((BooleanSupplier) arguments[arguments.length - 1]);
                  }
                  try {
                    return method.invoke(real, arguments);
                  } catch (InvocationTargetException e) {
                    throw e.getCause();
                  }
                });
    rig = new Rig(980, 720, slow);
  }

  /** A search that never ends by itself. */
  private void untilStopped(BooleanSupplier goOn) throws InterruptedException {
    while (goOn.getAsBoolean()) {
      Thread.sleep(5);
    }
    stopped.countDown();
  }

  @AfterEach
  void close() {
    isSlow.set(false);
    rig.close();
  }

  private void drawn() {
    rig.type("20'").key(KeyCode.ENTER).type("12' turn left").key(KeyCode.ENTER);
    rig.type("20' turn left").key(KeyCode.ENTER).type("close").key(KeyCode.ENTER);
  }

  private boolean isShown() {
    return Rig.get(() -> rig.node0("busy").isVisible());
  }

  @Test
  void whatIsSoonDoneShowsNothing() {
    drawn();
    rig.laid();
    assertThat(isShown()).isFalse();
  }

  @Test
  void theButtonStopsALayingAndBeginsItAgain() throws InterruptedException {
    isSlow.set(true);
    drawn();
    assertThat(isShown()).as("not at once").isFalse();
    rig.until(() -> rig.node0("busy").isVisible());
    assertThat(rig.text("busy-what")).startsWith("Laying");
    rig.clickOn("busy-button");
    stopped.await();
    assertThat(rig.desk().laying().isCurrent()).isTrue();
    assertThat(rig.plan().isLaid()).isFalse();
    assertThat(rig.text("busy-what")).isEqualTo("The joints are not laid");
    isSlow.set(false);
    rig.clickOn("busy-button").until(() -> rig.designer().board().desk().plan().isLaid());
    assertThat(isShown()).isFalse();
  }

  @Test
  void escapeStopsItTooAndWhatWasFoundStays() throws InterruptedException {
    isSlow.set(true);
    hasFirst.set(true);
    drawn();
    rig.until(
        () -> rig.designer().board().desk().laying().laid().filter(Laid::isFirst).isPresent());
    rig.until(() -> rig.node0("busy").isVisible());
    rig.key(KeyCode.ESCAPE);
    stopped.await();
    assertThat(rig.plan().isLaid()).isTrue();
    assertThat(isShown()).isFalse();
    assertThat(rig.plan().slabs()).hasSize(1);
  }

  @Test
  void sheetsThatAreStoppedAreNotWritten() throws IOException, InterruptedException {
    drawn();
    rig.laid();
    isSlow.set(true);
    rig.nextPlace(folder);
    rig.act(() -> rig.designer().job().sheets());
    rig.until(() -> rig.node0("busy").isVisible());
    assertThat(rig.text("busy-what")).startsWith("Writing");
    rig.clickOn("busy-button");
    stopped.await();
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().isTrouble()).isFalse();
    assertThat(isShown()).isFalse();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }
}
