package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.edit.Ref;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every label of the window has the room that its words need, at every step. */
@ExtendWith(NeedsWindow.class)
class NothingIsClippedTest {
  private static final Path SAMPLE =
      Path.of("samples/drive-approach-walk.jointwright.json").toAbsolutePath();

  private static void collect(Node node, List<Labeled> into) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
      into.add(labeled);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(c -> collect(c, into));
    }
  }

  private static List<String> clipped(Rig rig) {
    return Rig.get(
        () -> {
          List<Labeled> all = new ArrayList<>();
          collect(rig.designer().pane(), all);
          List<String> clipped = new ArrayList<>();
          for (Labeled l : all) {
            boolean fits =
                l.isWrapText()
                    ? l.getHeight() + 0.5 >= l.prefHeight(l.getWidth())
                    : l.getWidth() + 0.5 >= l.prefWidth(-1);
            if (!fits) {
              clipped.add(l.getText());
            }
          }
          return clipped;
        });
  }

  private static List<String> overlapping(Rig rig) {
    return Rig.get(
        () -> {
          List<Labeled> all = new ArrayList<>();
          collect(rig.designer().pane(), all);
          List<Labeled> labels = all.stream().filter(Label.class::isInstance).toList();
          List<String> found = new ArrayList<>();
          for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
              Bounds a = inner(labels.get(i));
              Bounds b = inner(labels.get(j));
              if (a.intersects(b)) {
                found.add(labels.get(i).getText() + " / " + labels.get(j).getText());
              }
            }
          }
          return found;
        });
  }

  /** Without the rim, which may touch that of the next. */
  private static Bounds inner(Labeled l) {
    Bounds b = l.localToScene(l.getLayoutBounds());
    return new javafx.geometry.BoundingBox(
        b.getMinX() + 1,
        b.getMinY() + 2,
        Math.max(0, b.getWidth() - 2),
        Math.max(0, b.getHeight() - 4));
  }

  private static void look(Rig rig, String where) {
    assertThat(clipped(rig)).as("clipped " + where).isEmpty();
    assertThat(overlapping(rig)).as("overlapping " + where).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {820, 1000})
  void everyLabelHasItsRoomAtEveryStep(int width) {
    try (Rig rig = new Rig(width, 760)) {
      look(rig, "on blank paper");
      rig.nextPlace(SAMPLE);
      rig.act(() -> rig.designer().job().open(SAMPLE));
      rig.until(() -> !rig.designer().board().desk().plan().slabs().isEmpty()).laid();
      look(rig, "at the joints");
      var slab = rig.plan().slabs().getFirst();
      for (String step : List.of("outline", "section", "joints", "sheets")) {
        rig.clickOn("step-" + step);
        look(rig, "at the " + step);
      }
      rig.clickOn("step-joints");
      pick(rig, new Pick.AtJoint(slab.id(), slab.joints().getFirst().id()));
      look(rig, "with a joint picked");
      pick(rig, new Pick.WholeSlab("approach"));
      rig.act(
          () -> rig.designer().board().change(d -> d.choosing("approach").measuring("approach")));
      rig.until(() -> rig.node0("layout-2") != null);
      look(rig, "with other layouts shown");
      rig.clickOn("step-outline");
      pick(rig, new Pick.AtEdge(Ref.outline(slab.id(), 2)));
      look(rig, "with a side picked");
      pick(rig, new Pick.AtCorner(Ref.outline(slab.id(), 1)));
      look(rig, "with a corner picked");
    }
  }

  @ParameterizedTest
  @CsvSource({"820, ENGLISH", "1280, ENGLISH", "820, SPANISH", "1280, SPANISH"})
  void everyShapeAndDrawingHasItsRoom(int width, Language language) {
    try (Rig rig = new Rig(width, 760, Settings.FIRST.with(language))) {
      for (ReadyKind kind : ReadyKind.values()) {
        rig.act(
            () ->
                rig.designer()
                    .board()
                    .change(d -> SetDown.changed(SetDown.begin(d), ReadyShape.usual(kind, false))));
        look(rig, "with a ready " + kind);
      }
      rig.act(() -> rig.designer().board().change(d -> SetDown.place(d, "slab")));
      rig.act(() -> rig.designer().board().change(d -> SetDown.place(SetDown.begin(d), "slab")));
      for (Drawn what : Drawn.values()) {
        rig.act(() -> rig.designer().board().change(d -> Drafting.begin(d, what)));
        look(rig, "while drawing " + what);
      }
      rig.act(() -> rig.designer().board().change(d -> d.withStep(Step.OUTLINE)));
      pick(rig, Things.pick(Things.all(rig.plan())));
      look(rig, "with several picked");
    }
  }

  private static void pick(Rig rig, Pick pick) {
    rig.act(() -> rig.designer().board().change(d -> d.picking(pick)));
  }

  @Test
  void theWindowIsPaintedAtAnySize() {
    try (Rig rig = new Rig()) {
      var picture = Rig.get(() -> rig.designer().picture(1920, 1080));
      assertThat(picture.getWidth()).isEqualTo(1920);
      assertThat(picture.getPixelReader().getColor(700, 1000))
          .isEqualTo(javafx.scene.paint.Color.web("#FBF9F4"));
      assertThat(picture.getPixelReader().getColor(20, 900))
          .isEqualTo(javafx.scene.paint.Color.web("#F3F0E9"));
    }
  }
}
