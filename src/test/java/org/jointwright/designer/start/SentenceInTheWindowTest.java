package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import javafx.scene.Cursor;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.jointwright.designer.canvas.LiveMarks;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.sketch.Typing;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The box of the sentence behaves as a field of text does, by keys and by the mouse. */
@ExtendWith(NeedsWindow.class)
class SentenceInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void beginASide() {
    rig = new Rig(1280, 800).type("20'").key(KeyCode.ENTER).type("12' left");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Typing typing() {
    return rig.desk().draft().orElseThrow().typing();
  }

  private static void copied(String text) {
    Rig.get(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(text);
          return Clipboard.getSystemClipboard().setContent(content);
        });
  }

  @Test
  void allOfItIsPickedAndTypedAnew() {
    rig.key(KeyCode.CONTROL, KeyCode.A);
    assertThat(typing().picked()).isEqualTo("12' left");
    rig.type("9' up");
    assertThat(typing()).isEqualTo(Typing.of("9' up"));
    rig.key(KeyCode.CONTROL, KeyCode.A).key(KeyCode.BACK_SPACE);
    assertThat(typing().text()).isEmpty();
    assertThat(rig.desk().draft().orElseThrow().placed()).as("the side before stays").hasSize(2);
  }

  @Test
  void partsOfItAreCopiedCutAndPutInAgain() {
    rig.key(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.LEFT).key(KeyCode.CONTROL, KeyCode.C);
    assertThat(Rig.get(() -> Clipboard.getSystemClipboard().getString())).isEqualTo("left");
    rig.key(KeyCode.END).key(KeyCode.CONTROL, KeyCode.V);
    assertThat(typing()).isEqualTo(Typing.of("12' leftleft"));
    rig.key(KeyCode.CONTROL, KeyCode.A).key(KeyCode.CONTROL, KeyCode.X);
    assertThat(typing().text()).isEmpty();
    assertThat(Rig.get(() -> Clipboard.getSystemClipboard().getString())).isEqualTo("12' leftleft");
    copied("  6' down\n4' right \n");
    rig.key(KeyCode.CONTROL, KeyCode.V);
    assertThat(typing()).as("on one line").isEqualTo(Typing.of("6' down 4' right"));
    rig.key(KeyCode.ENTER);
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(3);
  }

  @Test
  void theCaretGoesWhereKeysLeadIt() {
    rig.key(KeyCode.HOME).key(KeyCode.DELETE).type("2");
    assertThat(typing().text()).isEqualTo("22' left");
    rig.key(KeyCode.CONTROL, KeyCode.RIGHT).type("l");
    assertThat(typing().text()).isEqualTo("22' lleft");
    rig.key(KeyCode.LEFT).key(KeyCode.DELETE).key(KeyCode.RIGHT).key(KeyCode.BACK_SPACE);
    assertThat(typing().text()).isEqualTo("22' eft");
    rig.key(KeyCode.CONTROL, KeyCode.BACK_SPACE);
    assertThat(typing().text()).isEqualTo("eft");
    rig.key(KeyCode.CONTROL, KeyCode.DELETE);
    assertThat(typing().text()).isEmpty();
    assertThat(rig.desk().draft().orElseThrow().pencil()).as("the pencil stays").isEmpty();
    rig.key(KeyCode.LEFT);
    assertThat(rig.desk().draft().orElseThrow().pencil()).as("with nothing typed").isPresent();
  }

  @Test
  void nothingOfThePlanIsTouchedByTheKeysOfText() {
    rig.key(KeyCode.CONTROL, KeyCode.A).key(KeyCode.DELETE).type("10' up").key(KeyCode.ENTER);
    rig.drawn("20' left");
    Plan plan = rig.plan();
    rig.key(KeyCode.CONTROL, KeyCode.D).type("5'");
    rig.key(KeyCode.CONTROL, KeyCode.C).key(KeyCode.DELETE).key(KeyCode.CONTROL, KeyCode.A);
    rig.key(KeyCode.CONTROL, KeyCode.X).key(KeyCode.CONTROL, KeyCode.V);
    assertThat(rig.plan()).isSameAs(plan);
    assertThat(typing()).isEqualTo(Typing.of("5'"));
  }

  private OptionalInt placeAt(double x, double y) {
    return Rig.get(
        () -> {
          Board board = rig.designer().board();
          Point at = new Point(x, y);
          return LiveMarks.inSentence(board.desk(), board.words(), board.vocabulary(), at, false);
        });
  }

  /** A place of the paper where a click means that place of the sentence, in the box’s middle. */
  private Point placeOf(int index) {
    for (double y = 40; y < 700; y += 10) {
      for (double x = 10; x < 740; x++) {
        if (placeAt(x, y).equals(OptionalInt.of(index)) && placeAt(x, y + 20).isPresent()) {
          return new Point(x + 2, y + 20);
        }
      }
    }
    throw new AssertionError("no such place");
  }

  private void hand(Point paper, Runnable then) {
    rig.act(
        () -> {
          var at = rig.designer().pane().plan().localToScreen(paper.x(), paper.y());
          rig.robot().mouseMove(at);
        });
    then.run();
  }

  @Test
  void theMouseSetsTheCaretAndPicksAndSetsNoCornerBeneath() {
    Point third = placeOf(3);
    hand(third, () -> rig.act(() -> rig.robot().mousePress(MouseButton.PRIMARY)));
    assertThat(typing()).isEqualTo(Typing.of("12' left").led(3, false));
    hand(placeOf(1), () -> rig.release());
    assertThat(typing().picked()).isEqualTo("2'");
    assertThat(Rig.get(() -> rig.designer().pane().plan().getCursor())).isEqualTo(Cursor.TEXT);
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(2);
    rig.type("4'");
    assertThat(typing().text()).isEqualTo("14' left");
    hand(third, () -> rig.act(() -> rig.robot().mouseClick(MouseButton.PRIMARY)));
    rig.act(() -> rig.robot().mouseClick(MouseButton.PRIMARY));
    assertThat(typing().picked()).as("a double click").isEqualTo("14' left");
    hand(
        third.plus(new Point(0, 200)),
        () -> rig.act(() -> rig.robot().mouseClick(MouseButton.PRIMARY)));
    assertThat(rig.desk().draft().orElseThrow().placed()).as("beside the box").hasSize(3);
  }
}
