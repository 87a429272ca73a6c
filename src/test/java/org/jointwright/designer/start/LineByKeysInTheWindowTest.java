package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Drafting;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A line across a slab of 20 by 30 ft, its ends typed along the sides; no hand on the mouse. */
@ExtendWith(NeedsWindow.class)
class LineByKeysInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void drawASlab() {
    rig = new Rig(1280, 800).drawn("20' right", "30' up", "20' left");
    rig.act(() -> rig.designer().pane().plan().requestFocus());
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private static Point feet(double x, double y) {
    return new Point(12 * x, 12 * y);
  }

  private void begin(Drawn what) {
    rig.act(() -> rig.designer().board().change(d -> Drafting.begin(d, what)));
  }

  private String focused() {
    return Rig.get(() -> rig.designer().pane().getScene().getFocusOwner().getId());
  }

  private int chosen() {
    ComboBox<?> side = (ComboBox<?>) rig.node("row-line-side");
    return Rig.get(() -> side.getSelectionModel().getSelectedIndex());
  }

  private Point pencil() {
    return rig.desk().draft().orElseThrow().pencil().orElseThrow().at();
  }

  @Test
  void aSlabIsSplitByKeysAlone() {
    begin(Drawn.SPLIT);
    rig.type("8'");
    assertThat(focused()).as("a digit says how far along the side").isEqualTo("row-line-along");
    rig.key(KeyCode.ENTER);
    assertThat(pencil()).isEqualTo(feet(8, 0));
    rig.key(KeyCode.TAB);
    assertThat(focused()).isEqualTo("deed-set-end");
    rig.key(KeyCode.SPACE);
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(1);
    assertThat(focused()).isEqualTo("plan");
    assertThat(chosen()).as("the side across").isEqualTo(2);
    assertThat(rig.text("row-line-along")).as("not yet said").isEmpty();
    rig.type("5' up").key(KeyCode.ENTER).laid();
    assertThat(rig.plan().slabs()).hasSize(2);
    assertThat(rig.plan().slabs())
        .extracting(s -> s.outline().ring().area() / 144)
        .satisfiesExactlyInAnyOrder(
            a -> assertThat(a).isCloseTo(8 * 30, within(1e-6)),
            a -> assertThat(a).isCloseTo(12 * 30, within(1e-6)));
  }

  @Test
  void aPlaceThatWasTypedStaysWhereTheMouseOnlyCrossesThePaper() {
    begin(Drawn.SPLIT);
    rig.move(feet(6, 2)).type("8'").key(KeyCode.ENTER);
    rig.move(feet(15, 20)).move(feet(19, 29));
    assertThat(pencil()).isEqualTo(feet(8, 0));
    assertThat(rig.text("row-line-along")).isEqualTo("8\u2032-0\u2033");
    rig.clickOn("deed-set-end");
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(1);
    rig.move(feet(10, 20));
    assertThat(pencil()).as("from here on the mouse leads again").isNotEqualTo(feet(8, 0));
  }

  /** From 10 ft up the left side, which runs down, to half way up the right one. */
  @Test
  void bothEndsAreTypedAlongSides() {
    begin(Drawn.SPLIT);
    rig.clickOn("row-line-side").key(KeyCode.END).key(KeyCode.ENTER);
    assertThat(pencil()).as("half way at first").isEqualTo(feet(0, 15));
    rig.fill("line-along", "20'");
    assertThat(pencil()).as("from its first corner").isEqualTo(feet(0, 10));
    assertThat(rig.text("row-line-along")).isEqualTo("20\u2032-0\u2033");
    rig.clickOn("deed-set-end");
    assertThat(rig.has("deed-set-end")).as("no line goes nowhere").isFalse();
    assertThat(chosen()).as("the side across").isEqualTo(1);
    rig.clickOn("row-line-side").key(KeyCode.DOWN).key(KeyCode.ENTER);
    assertThat(pencil()).isEqualTo(feet(10, 30));
    rig.clickOn("row-line-side").key(KeyCode.UP).key(KeyCode.ENTER);
    assertThat(pencil()).isEqualTo(feet(20, 15));
    rig.fill("line-along", "10'").clickOn("deed-set-end").laid();
    List<Slab> slabs = rig.plan().slabs();
    assertThat(slabs).hasSize(2).allMatch(s -> s.outline().ring().box().width() == 240);
    assertThat(slabs).anyMatch(s -> s.outline().ring().area() == 240 * 120);
  }

  @Test
  void whatIsPastTheEndOfTheSideIsRefused() {
    begin(Drawn.SPLIT);
    rig.fill("line-along", "20'");
    assertThat(pencil()).as("its end").isEqualTo(feet(20, 0));
    assertThat(chosen())
        .as("still along the first side, though the corner is on the next too")
        .isEqualTo(0);
    rig.fill("line-along", "20'1");
    assertThat(rig.text("trouble-line-along")).contains("20");
    assertThat(pencil()).isEqualTo(feet(20, 0));
  }

  @Test
  void aJointStartsAndEndsLikewise() {
    begin(Drawn.JOINT);
    rig.type("10'").key(KeyCode.ENTER).key(KeyCode.TAB).key(KeyCode.SPACE);
    rig.type("30' up").key(KeyCode.ENTER).laid();
    assertThat(rig.plan().slabs().getFirst().lockedJoints())
        .singleElement()
        .satisfies(j -> assertThat(j.path().start()).isEqualTo(feet(10, 0)));
  }
}
