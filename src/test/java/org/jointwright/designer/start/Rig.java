package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.jointwright.designer.pane.Chooser;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Outside;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;

/** The real window with the real program behind it, driven by mouse and keys. */
final class Rig implements AutoCloseable {
  /** A wait of more pulses than this is no wait but a fault: about a minute. */
  private static final int PATIENCE = 3600;

  private final Deque<Path> places = new ArrayDeque<>();
  private final Designer designer;
  private final Stage stage;
  private final Robot robot;

  Rig() {
    this(980, 720);
  }

  Rig(int width, int height) {
    this(width, height, Settings.FIRST.with(Look.LIGHT));
  }

  Rig(int width, int height, Settings settings) {
    this(width, height, Memory.only(settings));
  }

  Rig(int width, int height, Memory memory) {
    this(width, height, memory, new Program());
  }

  /** A window with another program behind it. */
  Rig(int width, int height, Outside outside) {
    this(width, height, Memory.only(Settings.FIRST.with(Look.LIGHT)), outside);
  }

  private Rig(int width, int height, Memory memory, Outside outside) {
    Object[] made =
        get(
            () -> {
              Stage s = new Stage();
              Designer d = new Designer(s, outside, Optional.of(new FirstPlace()), memory);
              s.setX(0);
              s.setY(0);
              s.setWidth(width);
              s.setHeight(height);
              s.show();
              d.pane().plan().requestFocus();
              return new Object[] {d, s, new Robot()};
            });
    designer = (Designer) made[0];
    stage = (Stage) made[1];
    robot = (Robot) made[2];
    pulses(3);
  }

  /** Answers with the places that the test has laid ready. */
  private final class FirstPlace implements Chooser {
    @Override
    public Optional<Path> planToOpen() {
      return Optional.ofNullable(places.poll());
    }

    @Override
    public Optional<Path> photo() {
      return Optional.ofNullable(places.poll());
    }

    @Override
    public Optional<Path> placeForPlan(String suggestedName) {
      return Optional.ofNullable(places.poll());
    }

    @Override
    public Optional<Path> folderForSheets() {
      return Optional.ofNullable(places.poll());
    }
  }

  static <T> T get(Supplier<T> supplier) {
    if (Platform.isFxApplicationThread()) {
      return supplier.get();
    }
    CompletableFuture<T> got = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            got.complete(supplier.get());
          } catch (Throwable t) {
            got.completeExceptionally(t);
          }
        });
    return got.join();
  }

  /** Runs on the JavaFX thread, then waits until it is painted. */
  void act(Runnable action) {
    get(
        () -> {
          action.run();
          return true;
        });
    pulses(2);
  }

  static void pulses(int count) {
    CompletableFuture<Boolean> done = new CompletableFuture<>();
    Platform.runLater(
        () ->
            new AnimationTimer() {
              private int left = count;

              @Override
              public void handle(long now) {
                if (--left < 0) {
                  stop();
                  done.complete(true);
                }
              }
            }.start());
    done.join();
  }

  void nextPlace(Path place) {
    places.add(place);
  }

  Desk desk() {
    return get(() -> designer.board().desk());
  }

  Plan plan() {
    return desk().plan();
  }

  String title() {
    return get(stage::getTitle);
  }

  /** Waits until the joints are laid and judged for the plan as it is. */
  Rig laid() {
    return until(() -> designer.board().desk().laying().isCurrent());
  }

  Rig until(Supplier<Boolean> condition) {
    for (int i = 0; i < PATIENCE; i++) {
      if (get(condition)) {
        pulses(2);
        return this;
      }
      pulses(1);
    }
    throw new AssertionError("waited in vain");
  }

  Rig move(Point plan) {
    act(() -> robot.mouseMove(screen(plan)));
    return this;
  }

  Rig click(Point plan) {
    move(plan);
    act(() -> robot.mousePress(MouseButton.PRIMARY));
    act(() -> robot.mouseRelease(MouseButton.PRIMARY));
    return this;
  }

  Rig drag(Point from, Point... way) {
    press(from);
    for (Point p : way) {
      move(p);
    }
    return release();
  }

  Rig press(Point plan) {
    move(plan);
    act(() -> robot.mousePress(MouseButton.PRIMARY));
    return this;
  }

  Rig release() {
    act(() -> robot.mouseRelease(MouseButton.PRIMARY));
    return this;
  }

  Rig drag(MouseButton button, double fromX, double fromY, double toX, double toY) {
    act(() -> robot.mouseMove(onScreen(fromX, fromY)));
    act(() -> robot.mousePress(button));
    act(() -> robot.mouseMove(onScreen(toX, toY)));
    act(() -> robot.mouseRelease(button));
    return this;
  }

  Rig wheel(int notches, double x, double y) {
    act(() -> robot.mouseMove(onScreen(x, y)));
    act(() -> robot.mouseWheel(-notches));
    return this;
  }

  private Point2D screen(Point plan) {
    Point paper = designer.board().desk().viewport().toPaper(plan);
    return onScreen(paper.x(), paper.y());
  }

  private Point2D onScreen(double x, double y) {
    return designer.pane().plan().localToScreen(x, y);
  }

  Rig key(KeyCode... codes) {
    act(
        () -> {
          Arrays.stream(codes).forEach(robot::keyPress);
          for (int i = codes.length - 1; i >= 0; i--) {
            robot.keyRelease(codes[i]);
          }
        });
    return this;
  }

  /** Does something while a key is held down. */
  Rig holding(KeyCode code, Runnable action) {
    act(() -> robot.keyPress(code));
    action.run();
    act(() -> robot.keyRelease(code));
    return this;
  }

  /** Types with the keys of the keyboard: digits, letters, spaces, feet and inch marks. */
  Rig type(String text) {
    for (char c : text.toCharArray()) {
      switch (c) {
        case ' ' -> key(KeyCode.SPACE);
        case '\'' -> key(KeyCode.QUOTE);
        case '.' -> key(KeyCode.PERIOD);
        case '-' -> key(KeyCode.MINUS);
        case '/' -> key(KeyCode.SLASH);
        default -> key(KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(c))));
      }
    }
    return this;
  }

  /** Draws a slab by typing its sides, the last one but to be closed, and waits for its joints. */
  Rig drawn(String... sides) {
    for (String side : sides) {
      type(side).key(KeyCode.ENTER);
    }
    return type("close").key(KeyCode.ENTER).laid();
  }

  /** Opens the menu of what lies at a point, by the right button, and takes one of its items. */
  Rig choose(String item, Point at) {
    move(at);
    act(() -> robot.mousePress(MouseButton.SECONDARY));
    act(() -> robot.mouseRelease(MouseButton.SECONDARY));
    assertThat(menu()).contains(item);
    act(
        () ->
            open()
                .flatMap(m -> m.getItems().stream())
                .filter(i -> item.equals(i.getId()))
                .findFirst()
                .orElseThrow()
                .fire());
    act(() -> open().toList().forEach(javafx.stage.Window::hide));
    return this;
  }

  /** The names of the items of the menu that is open. */
  List<String> menu() {
    return get(
        () ->
            open()
                .flatMap(m -> m.getItems().stream())
                .map(javafx.scene.control.MenuItem::getId)
                .toList());
  }

  private static Stream<ContextMenu> open() {
    return List.copyOf(javafx.stage.Window.getWindows()).stream()
        .filter(ContextMenu.class::isInstance)
        .map(ContextMenu.class::cast);
  }

  Rig clickOn(String id) {
    Node node = node(id);
    act(() -> robot.mouseMove(middle(node)));
    act(() -> robot.mouseClick(MouseButton.PRIMARY));
    return this;
  }

  /** Where the middle of a node is on the screen. */
  Point2D middle(String id) {
    return middle(node(id));
  }

  private static Point2D middle(Node node) {
    return node.localToScreen(
        node.getLayoutBounds().getCenterX(), node.getLayoutBounds().getCenterY());
  }

  /** Replaces what stands in a row's box and presses Enter. */
  Rig fill(String row, String text) {
    clickOn("row-" + row);
    key(KeyCode.CONTROL, KeyCode.A);
    type(text);
    return key(KeyCode.ENTER);
  }

  boolean has(String id) {
    return get(() -> designer.pane().lookup("#" + id) != null);
  }

  Node node(String id) {
    Node node = get(() -> designer.pane().lookup("#" + id));
    assertThat(node).as("a node named " + id).isNotNull();
    return node;
  }

  /** The node of that name, asked for on the JavaFX thread. */
  Node node0(String id) {
    return designer.pane().lookup("#" + id);
  }

  String text(String id) {
    Node node = node(id);
    return get(
        () ->
            node instanceof Labeled l
                ? l.getText()
                : ((javafx.scene.control.TextInputControl) node).getText());
  }

  Designer designer() {
    return designer;
  }

  /** The hand on mouse and keys; used on the JavaFX thread. */
  Robot robot() {
    return robot;
  }

  @Override
  public void close() {
    act(stage::close);
  }
}
