package org.jointwright.designer.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import javafx.stage.Window;

/**
 * Someone before the real window, told line by line what to do with mouse and keys, as a trial is
 * driven and played again:
 *
 * <pre>
 * move 640 400            press            release          click 640 400 [right]
 * double 640 400          drag 10 10 90 40 140 80           wheel 3 640 400
 * type 24'6 left          key CTRL+Z       place /a/file    wait       picture name
 * </pre>
 *
 * <p>Places are pixels of the window. {@code place} answers the next question for a file, {@code
 * wait} waits until joints are laid. A line that begins with # is a remark. Run by itself it reads
 * lines from standard input, answers each with {@code ok} or what was wrong, and keeps pictures and
 * the log of all lines in the folder it is given.
 */
final class Sitting implements AutoCloseable {
  static final int WIDTH = 1280;
  static final int HEIGHT = 800;

  /** Pulses after which what was done is painted, slow looks included. */
  private static final int SETTLED = 6;

  /** Pulses to wait for joints: about ten seconds. */
  private static final int PATIENCE = 600;

  private final Rig rig;
  private final Path folder;

  /**
   * A window of the usual size, on blank paper.
   *
   * @param folder where pictures go
   */
  Sitting(Path folder) {
    this.folder = folder;
    this.rig = new Rig(WIDTH, HEIGHT);
  }

  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Platform.startup(() -> Platform.setImplicitExit(false));
    try (Sitting sitting = new Sitting(folder);
        BufferedReader in =
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream log =
            new PrintStream(
                Files.newOutputStream(folder.resolve("events.txt")),
                true,
                StandardCharsets.UTF_8)) {
      out.println("ready");
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        log.println(line);
        out.println(sitting.answer(line));
      }
    } finally {
      Platform.exit();
    }
  }

  private String answer(String line) {
    try {
      does(line);
      return "ok";
    } catch (RuntimeException | IOException e) {
      return "no: " + e.getMessage();
    }
  }

  Rig rig() {
    return rig;
  }

  /**
   * Does what a line says.
   *
   * @throws IllegalArgumentException when it says nothing that is known
   */
  void does(String line) throws IOException {
    if (line.isBlank() || line.startsWith("#")) {
      return;
    }
    int space = line.indexOf(' ');
    String what = space < 0 ? line : line.substring(0, space);
    String rest = space < 0 ? "" : line.substring(space + 1);
    switch (what) {
      case "move" -> at(numbers(rest));
      case "press" -> rig.act(() -> rig.robot().mousePress(MouseButton.PRIMARY));
      case "release" -> rig.act(() -> rig.robot().mouseRelease(MouseButton.PRIMARY));
      case "click" -> {
        at(numbers(rest));
        click(rest.endsWith("right") ? MouseButton.SECONDARY : MouseButton.PRIMARY);
      }
      case "double" -> {
        at(numbers(rest));
        click(MouseButton.PRIMARY);
        click(MouseButton.PRIMARY);
      }
      case "drag" -> drag(numbers(rest));
      case "wheel" -> {
        List<Double> n = numbers(rest);
        at(n.subList(1, n.size()));
        rig.act(() -> rig.robot().mouseWheel((int) -n.getFirst()));
      }
      case "type" -> rig.type(rest);
      case "key" -> rig.key(keys(rest));
      case "place" -> rig.nextPlace(Path.of(rest));
      case "wait" -> settle();
      case "picture" -> picture(rest);
      default -> throw new IllegalArgumentException("nothing that is known: " + what);
    }
    Rig.pulses(SETTLED);
  }

  private void at(List<Double> place) {
    rig.act(() -> rig.robot().mouseMove(place.get(0), place.get(1)));
  }

  private void click(MouseButton button) {
    rig.act(() -> rig.robot().mousePress(button));
    rig.act(() -> rig.robot().mouseRelease(button));
  }

  /** Between the places that are named the hand moves in small steps, as hands do. */
  private void drag(List<Double> places) {
    int steps = 8;
    at(places);
    rig.act(() -> rig.robot().mousePress(MouseButton.PRIMARY));
    for (int i = 2; i + 1 < places.size(); i += 2) {
      for (int s = 1; s <= steps; s++) {
        double share = (double) s / steps;
        double x = places.get(i - 2) + share * (places.get(i) - places.get(i - 2));
        double y = places.get(i - 1) + share * (places.get(i + 1) - places.get(i - 1));
        at(List.of(x, y));
      }
    }
    rig.act(() -> rig.robot().mouseRelease(MouseButton.PRIMARY));
  }

  private void settle() {
    for (int i = 0; i < PATIENCE && !rig.desk().laying().isCurrent(); i++) {
      Rig.pulses(1);
    }
  }

  private void picture(String name) throws IOException {
    settle();
    Rig.pulses(SETTLED);
    WritableImage seen = Rig.get(Sitting::seen);
    Files.write(folder.resolve(name + ".png"), Png.bytes(seen));
  }

  /**
   * All windows as they lie over each other, menus too, which a picture of the first leaves out.
   */
  private static WritableImage seen() {
    WritableImage whole = new WritableImage(WIDTH, HEIGHT);
    for (Window w : Window.getWindows()) {
      if (w.isShowing()) {
        Scene scene = w.getScene();
        SnapshotParameters clear = new SnapshotParameters();
        clear.setFill(Color.TRANSPARENT);
        WritableImage own = scene.getRoot().snapshot(clear, null);
        Bounds b = scene.getRoot().localToScene(scene.getRoot().getBoundsInLocal());
        lay(
            own,
            whole,
            (int) (w.getX() + scene.getX() + b.getMinX()),
            (int) (w.getY() + scene.getY() + b.getMinY()));
      }
    }
    return whole;
  }

  private static void lay(WritableImage own, WritableImage whole, int left, int top) {
    for (int y = Math.max(0, -top); y < own.getHeight() && y + top < HEIGHT; y++) {
      for (int x = Math.max(0, -left); x < own.getWidth() && x + left < WIDTH; x++) {
        Color over = own.getPixelReader().getColor(x, y);
        Color under = whole.getPixelReader().getColor(x + left, y + top);
        Color both =
            under.interpolate(
                Color.color(over.getRed(), over.getGreen(), over.getBlue()), over.getOpacity());
        whole.getPixelWriter().setColor(x + left, y + top, over.getOpacity() == 1 ? over : both);
      }
    }
  }

  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    for (String part : text.split(" ")) {
      if (!part.isEmpty() && !Character.isLetter(part.charAt(0))) {
        numbers.add(Double.valueOf(part));
      }
    }
    return numbers;
  }

  private static KeyCode[] keys(String text) {
    return Arrays.stream(text.trim().split("\\+"))
        .map(k -> k.toUpperCase(Locale.ROOT))
        .map(k -> k.equals("CTRL") ? "CONTROL" : k)
        .map(k -> k.equals("ESC") ? "ESCAPE" : k)
        .map(KeyCode::valueOf)
        .toArray(KeyCode[]::new);
  }

  @Override
  public void close() {
    rig.close();
  }
}
