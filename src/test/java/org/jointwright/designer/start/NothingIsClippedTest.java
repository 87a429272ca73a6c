package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.ready.ReadyKind;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.TextSize;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every word of the window has the room it needs: at every step, whatever is picked, in both
 * languages and measures, by day and by night, at the sizes that screens have.
 */
@ExtendWith(NeedsWindow.class)
class NothingIsClippedTest {
  private static final Path SAMPLES = Path.of("samples").toAbsolutePath();

  /**
   * The window in pixels of the look. A window of 1280 by 800 where all is half as large again has
   * the room of the first; one of 1920 by 1080 no less than the second.
   */
  private static final List<Portrait.Size> SIZES =
      List.of(new Portrait.Size(853, 533), new Portrait.Size(1280, 720));

  /** All that is wrong, so that one run tells everything. */
  private final List<String> wanting = new ArrayList<>();

  private void look(Rig rig, String where) {
    for (Portrait.Size size : SIZES) {
      Rig.get(() -> rig.designer().sized(size.width(), size.height(), RoomForWords::wanting))
          .forEach(w -> wanting.add(where + ", " + size.width() + " wide: " + w));
    }
  }

  private static void open(Rig rig, String sample) {
    Optional<Path> file = Optional.of(SAMPLES.resolve(sample + ".jointwright.json"));
    rig.act(() -> rig.designer().job().open(file.orElseThrow()));
    rig.until(() -> rig.designer().board().desk().papers().file().equals(file)).laid();
  }

  private static void change(Rig rig, UnaryOperator<Desk> change) {
    rig.act(() -> rig.designer().board().change(change));
  }

  private void pick(Rig rig, Pick pick) {
    change(rig, d -> d.picking(pick));
    look(rig, "with " + pick);
  }

  private static Settings settings(Language language, Measures measures, Look look) {
    return new Settings(language, measures, look, TextSize.USUAL);
  }

  @ParameterizedTest
  @CsvSource({
    "ENGLISH, FEET_INCHES, LIGHT",
    "ENGLISH, METRIC, DARK",
    "SPANISH, FEET_INCHES, DARK",
    "SPANISH, METRIC, LIGHT"
  })
  void everyWordHasItsRoomOnALaidJob(Language language, Measures measures, Look look) {
    try (Rig rig = new Rig(1000, 760, settings(language, measures, look))) {
      open(rig, "drive-approach-walk");
      for (Step step : Step.values()) {
        change(rig, d -> d.withStep(step));
        look(rig, "at " + step);
      }
      everyPick(rig);
      broken(rig);
    }
    assertThat(wanting).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"ENGLISH, FEET_INCHES", "SPANISH, METRIC"})
  void everyWordHasItsRoomWhileDrawing(Language language, Measures measures) {
    try (Rig rig = new Rig(1000, 760, settings(language, measures, Look.LIGHT))) {
      look(rig, "on blank paper");
      notices(rig);
      rig.type("20 ").key(KeyCode.ENTER).type("1");
      look(rig, "with a side typed");
      change(rig, d -> Desk.blank().measuredIn(measures).onPaperOf(d));
      for (ReadyKind kind : ReadyKind.values()) {
        change(rig, d -> SetDown.changed(SetDown.begin(d), ReadyShape.usual(kind, false)));
        look(rig, "with a ready " + kind);
      }
      change(rig, d -> SetDown.place(d, "slab"));
      change(rig, d -> SetDown.place(SetDown.begin(d), "slab"));
      for (Drawn what : Drawn.values()) {
        change(rig, d -> Drafting.begin(d, what));
        look(rig, "while drawing " + what);
      }
      change(rig, d -> d.withStep(Step.OUTLINE));
      pick(rig, Things.pick(Things.all(rig.plan())));
      open(rig, "two-panels-in-an-old-drive");
      change(rig, d -> d.withStep(Step.OUTLINE));
      pick(rig, new Pick.AtGiven(0));
    }
    assertThat(wanting).isEmpty();
  }

  private void everyPick(Rig rig) {
    Slab slab = rig.plan().slabs().getFirst();
    change(rig, d -> d.withStep(Step.OUTLINE));
    pick(rig, new Pick.WholeSlab(slab.id()));
    pick(rig, new Pick.AtEdge(Ref.outline(slab.id(), 0)));
    pick(rig, new Pick.AtEdge(Ref.outline(slab.id(), 2)));
    pick(rig, new Pick.AtCorner(Ref.outline(slab.id(), 1)));
    rig.plan().fixed().stream().limit(1).forEach(f -> pick(rig, new Pick.AtFixed(f.id())));
    slab.openings().stream().limit(1).forEach(o -> pick(rig, new Pick.AtOpening(slab.id(), 0)));
    change(rig, d -> d.withStep(Step.JOINTS));
    for (JointKind kind : JointKind.values()) {
      slab.joints().stream()
          .filter(j -> j.kind() == kind)
          .findFirst()
          .ifPresent(j -> pick(rig, new Pick.AtJoint(slab.id(), j.id())));
    }
  }

  /** The other layouts; then findings, and their fixes. */
  private void broken(Rig rig) {
    String small = "approach";
    change(rig, d -> d.picking(new Pick.WholeSlab(small)).choosing(small).measuring(small));
    rig.until(() -> rig.node0("layout-2") != null);
    look(rig, "with other layouts shown");
    Slab drive = rig.plan().slabs().getFirst();
    String joint =
        drive.joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION)
            .findFirst()
            .orElseThrow()
            .id();
    change(rig, d -> d.editedOnly(new JointEdit.Remove(drive.id(), joint)));
    rig.laid();
    change(rig, d -> FindingFacts.goTo(d, 1));
    rig.until(() -> rig.node0("fix-1") != null);
    look(rig, "with a finding gone to");
  }

  private void notices(Rig rig) {
    for (String key : List.of("typing", "keys", "caution")) {
      String name = "window.notice." + key;
      List<String> lines = rig.designer().board().say(name + ".lines").lines().toList();
      change(rig, d -> d.told(Notice.word(name, lines)));
      look(rig, "told of " + key);
    }
    change(rig, d -> d.told(Notice.keepFirst(Notice.Next.CLOSE)));
    look(rig, "asked to save");
    change(rig, Desk::untold);
  }

  @Test
  void whereAllIsEnlargedThereIsTheRoomOfASmallerWindow() {
    try (Rig rig =
        new Rig(
            1280,
            800,
            settings(Language.ENGLISH, Measures.PLAN, Look.LIGHT).with(TextSize.LARGEST))) {
      Rig.get(
          () ->
              rig.designer()
                  .sized(
                      1280,
                      800,
                      all -> {
                        assertThat(rig.designer().pane().getWidth()).isBetween(853.0, 854.0);
                        assertThat(rig.designer().pane().getHeight()).isBetween(533.0, 534.0);
                        return all;
                      }));
    }
  }

  @Test
  void theWindowIsPaintedAtAnySize() {
    try (Rig rig = new Rig()) {
      var picture = Rig.get(() -> rig.designer().picture(1920, 1080));
      assertThat(picture.getWidth()).isEqualTo(1920);
      assertThat(picture.getPixelReader().getColor(700, 1000)).isEqualTo(Color.web("#FBF9F4"));
      assertThat(picture.getPixelReader().getColor(20, 900)).isEqualTo(Color.web("#F3F0E9"));
    }
  }
}
