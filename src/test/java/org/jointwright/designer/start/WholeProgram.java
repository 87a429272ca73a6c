package org.jointwright.designer.start;

import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jointwright.Main;

/**
 * The whole program in a process of its own, with a hand at its mouse and keys. Says on standard
 * output what the hand has done, so that whoever started it knows.
 */
final class WholeProgram {
  /** Every so many edits the hand saves. */
  static final int SAVES = 7;

  /** A wait of more pulses than this is no wait but a fault: about a minute. */
  private static final int PATIENCE = 3600;

  private WholeProgram() {}

  /**
   * @param args {@code edit} or {@code look}, then the program's own arguments
   */
  public static void main(String[] args) {
    boolean isEditing = args[0].equals("edit");
    Thread hand =
        new Thread(() -> sit(isEditing ? WholeProgram::edit : WholeProgram::look), "hand");
    hand.setDaemon(true);
    hand.start();
    Main.main(java.util.Arrays.copyOfRange(args, 1, args.length));
  }

  /** A hand that is at its wits’ end ends the program, so that nobody waits for it. */
  private static void sit(Runnable what) {
    try {
      while (!isToolkitUp()) {
        Thread.sleep(50);
      }
      what.run();
    } catch (InterruptedException | RuntimeException | Error e) {
      e.printStackTrace();
      Runtime.getRuntime().halt(1);
    }
  }

  private static boolean isToolkitUp() {
    try {
      Platform.runLater(() -> {});
      return true;
    } catch (IllegalStateException e) {
      return false;
    }
  }

  /** Gives the job one name after the other, for ever; saves now and then. */
  private static void edit() {
    until("step 0");
    Robot robot = Rig.get(Robot::new);
    for (int i = 1; ; i++) {
      String name = "step " + i;
      type(robot, name);
      until(name + " ");
      System.out.println(i);
      if (i % SAVES == 0) {
        key(robot, KeyCode.CONTROL, KeyCode.S);
      }
    }
  }

  private static void type(Robot robot, String name) {
    at(robot, node("row-job-name"));
    key(robot, KeyCode.CONTROL, KeyCode.A);
    name.chars()
        .mapToObj(
            c ->
                c == ' '
                    ? KeyCode.SPACE
                    : KeyCode.getKeyCode(Character.toString(c).toUpperCase(java.util.Locale.ROOT)))
        .forEach(c -> key(robot, c));
    key(robot, KeyCode.ENTER);
  }

  /** Says what stands in the window's title once a plan is there. */
  private static void look() {
    until("step ");
    System.out.println(Rig.get(() -> stage().getTitle()));
  }

  private static void until(String inTitle) {
    for (int i = 0; i < PATIENCE; i++) {
      if (Rig.get(() -> stage() != null && title().contains(inTitle))) {
        return;
      }
      Rig.pulses(1);
    }
    throw new AssertionError("the title never said " + inTitle);
  }

  private static String title() {
    return String.valueOf(stage().getTitle());
  }

  private static Stage stage() {
    return (Stage)
        Window.getWindows().stream().filter(w -> w instanceof Stage).findFirst().orElse(null);
  }

  private static Node node(String id) {
    return Rig.get(
        () -> {
          Scene scene = stage().getScene();
          return scene.lookup("#" + id);
        });
  }

  private static void at(Robot robot, Node node) {
    Rig.get(
        () -> {
          Point2D middle =
              node.localToScreen(
                  node.getLayoutBounds().getCenterX(), node.getLayoutBounds().getCenterY());
          robot.mouseMove(middle);
          robot.mouseClick(MouseButton.PRIMARY);
          return true;
        });
    Rig.pulses(1);
  }

  private static void key(Robot robot, KeyCode... codes) {
    Rig.get(
        () -> {
          for (KeyCode c : codes) {
            robot.keyPress(c);
          }
          for (int i = codes.length - 1; i >= 0; i--) {
            robot.keyRelease(codes[i]);
          }
          return true;
        });
  }
}
