package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Starts the toolkit once for all tests of the window. Where the native library for text is missing
 * they are skipped and say what to install; where CI is true that is a failure.
 */
final class NeedsWindow implements BeforeAllCallback {
  private static final String MISSING =
      "window tests need the native library for text: apt-get install libpangoft2-1.0-0";

  private static Optional<String> trouble = Optional.empty();
  private static boolean isStarted;

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    if (!isStarted) {
      isStarted = true;
      trouble = Display.hasText() ? start() : Optional.of("it cannot be loaded");
      trouble.ifPresent(t -> System.err.println("WINDOW TESTS DO NOT RUN: " + said(t)));
    }
    if (trouble.isPresent()) {
      String what = said(trouble.get());
      if ("true".equals(System.getenv("CI"))) {
        fail(what);
      }
      abort(what);
    }
  }

  private static String said(String trouble) {
    return MISSING + " (" + trouble + ")";
  }

  private static Optional<String> start() throws InterruptedException {
    CompletableFuture<Double> width = new CompletableFuture<>();
    try {
      Platform.startup(
          () -> {
            Platform.setImplicitExit(false);
            try {
              width.complete(new Text("24′6½").getLayoutBounds().getWidth());
            } catch (Throwable t) {
              width.completeExceptionally(t);
            }
          });
      return width.get(30, TimeUnit.SECONDS) > 0 ? Optional.empty() : Optional.of("no text");
    } catch (ExecutionException e) {
      return Optional.of(e.getCause().toString());
    } catch (TimeoutException | RuntimeException | LinkageError e) {
      return Optional.of(e.toString());
    }
  }
}
