package org.jointwright.designer.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.jointwright.app.Saving;

/** Where the window stands and how large it is, remembered from one start to the next. */
final class StagePlace {
  private static final String NAME = "window.txt";

  /** So much of the window’s top must be on a screen for it to be taken hold of, pixels. */
  private static final double GRIP = 80;

  private final Stage stage;
  private final Path file;
  private final PauseTransition pause = new PauseTransition(Duration.seconds(1));
  private Optional<Bounds> bounds = Optional.empty();

  /** Where the window stood while it did not fill the screen, and whether it does. */
  record Bounds(double x, double y, double width, double height, boolean isFilling) {
    String text() {
      return x + " " + y + " " + width + " " + height + " " + isFilling + "\n";
    }

    /** What a text says; empty where it says nothing of use. */
    static Optional<Bounds> of(String text) {
      String[] parts = text.strip().split(" ", -1);
      try {
        Bounds b =
            new Bounds(
                Double.parseDouble(parts[0]),
                Double.parseDouble(parts[1]),
                Double.parseDouble(parts[2]),
                Double.parseDouble(parts[3]),
                Boolean.parseBoolean(parts[4]));
        return Optional.of(b)
            .filter(x -> Double.isFinite(x.x + x.y) && x.width > 1 && x.height > 1);
      } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
        return Optional.empty();
      }
    }
  }

  private StagePlace(Stage stage, Path file) {
    this.stage = stage;
    this.file = file;
  }

  /** Puts a window that is not shown yet where it stood last, and remembers where it goes. */
  static void remember(Stage stage, Path folder) {
    new StagePlace(stage, folder.resolve(NAME)).begin();
  }

  private void begin() {
    bounds = read();
    bounds.filter(StagePlace::isInReach).ifPresent(this::put);
    pause.setOnFinished(e -> bounds.ifPresent(b -> Saving.remember(file, b.text())));
    stage.xProperty().addListener((o, was, is) -> changed());
    stage.yProperty().addListener((o, was, is) -> changed());
    stage.widthProperty().addListener((o, was, is) -> changed());
    stage.heightProperty().addListener((o, was, is) -> changed());
    stage.maximizedProperty().addListener((o, was, is) -> changed());
    stage.setOnHiding(e -> bounds.ifPresent(b -> Saving.remember(file, b.text())));
  }

  private Optional<Bounds> read() {
    try {
      return Files.isRegularFile(file) ? Bounds.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Whether a screen is there to show it: one may have been taken away since. */
  private static boolean isInReach(Bounds b) {
    return Screen.getScreens().stream()
        .map(Screen::getVisualBounds)
        .anyMatch(
            s ->
                b.x + b.width >= s.getMinX() + GRIP
                    && b.x <= s.getMaxX() - GRIP
                    && b.y >= s.getMinY() - 1
                    && b.y <= s.getMaxY() - GRIP);
  }

  private void put(Bounds b) {
    stage.setX(b.x);
    stage.setY(b.y);
    stage.setWidth(Math.max(b.width, stage.getMinWidth()));
    stage.setHeight(Math.max(b.height, stage.getMinHeight()));
    stage.setMaximized(b.isFilling);
  }

  private void changed() {
    if (!stage.isShowing() || Double.isNaN(stage.getX() + stage.getWidth())) {
      return;
    }
    bounds =
        Optional.of(
            stage.isMaximized()
                ? bounds
                    .map(b -> new Bounds(b.x, b.y, b.width, b.height, true))
                    .orElseGet(() -> now(true))
                : now(false));
    pause.playFromStart();
  }

  private Bounds now(boolean isFilling) {
    return new Bounds(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), isFilling);
  }
}
