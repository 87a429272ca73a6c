package org.jointwright.designer.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.jointwright.app.Saving;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Step;

/** Makes a picture of the window, with or without a screen. */
public final class Portrait {
  /** Pulses after which everything that was laid out is painted too. */
  private static final int PULSES = 4;

  private Portrait() {}

  /**
   * Opens a plan in a window, waits until its joints are laid and judged, and writes a PNG of the
   * window's content; for each sitting anew. Needs no screen: {@code -Dglass.platform=Headless
   * -Dprism.order=sw} will do.
   *
   * @param plan the plan file
   * @throws IOException when a picture cannot be written
   */
  public static void write(Path plan, List<Sitting> sittings) throws IOException {
    CompletableFuture<Boolean> begun = new CompletableFuture<>();
    Platform.startup(
        () -> {
          Platform.setImplicitExit(false);
          begun.complete(true);
        });
    try {
      begun.get();
      for (Sitting sitting : sittings) {
        CompletableFuture<WritableImage> picture = new CompletableFuture<>();
        Platform.runLater(() -> sit(plan, sitting, picture));
        Saving.save(sitting.png(), Png.bytes(picture.get()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the window could not be painted", e.getCause());
    } finally {
      Platform.exit();
    }
  }

  /**
   * One picture.
   *
   * @param size the window's size in pixels
   * @param settings what is chosen of the window
   * @param png the file of the picture
   */
  public record Sitting(Size size, Settings settings, Path png) {}

  /** A size in pixels. */
  public record Size(int width, int height) {}

  private static void sit(Path plan, Sitting sitting, CompletableFuture<WritableImage> picture) {
    try {
      Stage stage = new Stage();
      Designer designer =
          new Designer(stage, new Program(), Optional.empty(), Memory.only(sitting.settings()));
      Size size = sitting.size();
      designer.root().setPrefSize(size.width(), size.height());
      stage.show();
      designer.pane().plan().requestFocus();
      designer.root().resize(size.width(), size.height());
      designer.job().open(plan);
      waitFor(designer, size, picture);
    } catch (RuntimeException e) {
      picture.completeExceptionally(e);
    }
  }

  private static void waitFor(
      Designer designer, Size size, CompletableFuture<WritableImage> picture) {
    new AnimationTimer() {
      private int pulses;

      @Override
      public void handle(long now) {
        Board board = designer.board();
        Desk desk = board.desk();
        boolean isReady =
            desk.notice().isPresent()
                || (desk.laying().settled().isPresent() && !desk.plan().slabs().isEmpty());
        pulses = isReady ? pulses + 1 : 0;
        if (pulses == 1 && desk.sight().step() != Step.JOINTS) {
          board.change(d -> d.withStep(Step.JOINTS));
        }
        if (pulses > PULSES) {
          stop();
          picture.complete(designer.picture(size.width(), size.height()));
          designer.root().getScene().getWindow().hide();
        }
      }
    }.start();
  }
}
