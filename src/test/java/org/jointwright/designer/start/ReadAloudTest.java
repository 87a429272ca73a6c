package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.plan.edit.Ref;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What a screen reader is told: everything that can have the focus says what it is. */
@ExtendWith(NeedsWindow.class)
class ReadAloudTest {
  private static final Path SAMPLE =
      Path.of("samples/drive-approach-walk.jointwright.json").toAbsolutePath();

  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig(1280, 800);
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private void openSample() {
    rig.nextPlace(SAMPLE);
    rig.key(KeyCode.CONTROL, KeyCode.O);
    rig.until(() -> !rig.designer().board().desk().plan().slabs().isEmpty()).laid();
  }

  private void pick(Pick pick) {
    rig.act(() -> rig.designer().board().change(d -> d.picking(pick)));
  }

  private String text(Node node) {
    return Rig.get(() -> String.valueOf(node.queryAccessibleAttribute(AccessibleAttribute.TEXT)));
  }

  /** All that Tab can come to, and says nothing or has no part to play. */
  private List<String> silent() {
    return Rig.get(
        () -> {
          List<Node> focusable = new ArrayList<>();
          collect(rig.designer().pane(), focusable);
          assertThat(focusable).as("what Tab can come to").hasSizeGreaterThan(4);
          return focusable.stream().filter(ReadAloudTest::isSilent).map(Node::toString).toList();
        });
  }

  private static void collect(Node node, List<Node> focusable) {
    if (!node.isVisible()) {
      return;
    }
    if (node.isFocusTraversable() && !node.isDisabled()) {
      focusable.add(node);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(n -> collect(n, focusable));
    }
  }

  private static boolean isSilent(Node node) {
    Object said = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
    return said == null
        || said.toString().isBlank()
        || node.getAccessibleRole() == AccessibleRole.NODE
        || node.getAccessibleRole() == AccessibleRole.PARENT;
  }

  @Test
  void everythingOnBlankPaperSpeaks() {
    assertThat(silent()).isEmpty();
    assertThat(text(rig.node("plan"))).contains("blank paper");
  }

  @Test
  void everythingAtEachStepSpeaks() {
    openSample();
    String slab = rig.plan().slabs().getFirst().id();
    List<Pick> picks =
        List.of(
            Pick.NOTHING,
            new Pick.WholeSlab(slab),
            new Pick.AtCorner(Ref.outline(slab, 0)),
            new Pick.AtEdge(Ref.outline(slab, 0)));
    for (String step : List.of("outline", "section", "joints", "sheets")) {
      rig.clickOn("step-" + step);
      for (Pick pick : picks) {
        pick(pick);
        assertThat(silent()).as("%s, %s", step, pick).isEmpty();
      }
    }
  }

  @Test
  void whatIsPickedIsSaidWithItsFacts() {
    openSample();
    String slab = rig.plan().slabs().getFirst().id();
    rig.clickOn("step-outline");
    pick(new Pick.AtCorner(Ref.outline(slab, 0)));
    assertThat(text(rig.node("plan"))).contains(rig.text("facts-title"), "corner");
    String joint = rig.plan().slabs().getFirst().joints().getFirst().id();
    rig.clickOn("step-joints");
    pick(new Pick.AtJoint(slab, joint));
    assertThat(text(rig.node("plan"))).contains(rig.text("facts-title"));
  }

  @Test
  void aFactIsSaidWithItsNameAndItsFigureAsTyped() {
    openSample();
    rig.clickOn("step-section");
    Node thickness = rig.node("row-slab-thickness");
    assertThat(text(thickness)).contains("Thickness", rig.text("row-slab-thickness"));
    rig.clickOn("row-slab-thickness").key(KeyCode.CONTROL, KeyCode.A).type("5");
    assertThat(text(thickness)).endsWith("5");
  }

  @Test
  void aNoticeIsReadOutByTheButtonThatGetsTheFocus() {
    rig.act(
        () ->
            rig.designer()
                .board()
                .change(d -> d.told(Notice.trouble("window.notice.notKept", List.of("no room")))));
    rig.act(() -> {});
    Node focused = Rig.get(() -> rig.designer().pane().getScene().getFocusOwner());
    assertThat(text(focused)).contains("Not saved", "no room", "Put away");
    assertThat(silent()).isEmpty();
  }
}
