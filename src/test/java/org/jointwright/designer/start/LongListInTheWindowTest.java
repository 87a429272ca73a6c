package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A list of very many findings is made a part at a time, and every finding is still reached. */
@ExtendWith(NeedsWindow.class)
class LongListInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void draw() {
    rig = new Rig(1280, 800);
    rig.type("20'").key(KeyCode.ENTER);
    rig.type("30' turn left").key(KeyCode.ENTER);
    rig.type("20' turn left").key(KeyCode.ENTER);
    rig.type("close").key(KeyCode.ENTER).laid();
    rig.clickOn("step-joints");
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private void find(int many) {
    rig.act(() -> rig.designer().board().change(d -> found(d, many)));
  }

  private static Desk found(Desk desk, int many) {
    Laid laid = desk.laying().laid().orElseThrow();
    List<Finding> findings =
        IntStream.range(0, many)
            .mapToObj(
                i ->
                    new Finding(
                        "S3",
                        Severity.SHOULD,
                        "slab 1",
                        new Subject.OnSlab(),
                        new Point(10 + i, 10 + i),
                        0.6,
                        0.5,
                        "check.s3.uneven",
                        List.of("slab 1", 60.0, 0.5, "P1"),
                        List.of()))
            .toList();
    return desk.answered(
        new Laid(
            laid.generation(), laid.asked(), laid.layout(), new Judgement(findings, List.of())));
  }

  @Test
  void oneMoreThanAPartIsLeftUntilItIsAskedFor() {
    find(40);
    assertThat(rig.has("finding-40")).isTrue();
    assertThat(rig.has("findings-rest")).isFalse();
    find(41);
    assertThat(rig.has("finding-40")).isTrue();
    assertThat(rig.has("finding-41")).isFalse();
    rig.act(() -> rig.node("findings-rest").requestFocus());
    rig.key(KeyCode.ENTER);
    assertThat(rig.has("finding-41")).isTrue();
    assertThat(rig.has("findings-rest")).isFalse();
    assertThat(rig.node("finding-41").isFocused()).as("the keys go on there").isTrue();
  }

  @Test
  void whatIsGoneToIsListedAndInSight() {
    find(95);
    assertThat(rig.has("finding-81")).isFalse();
    rig.act(() -> rig.designer().board().change(d -> FindingFacts.goTo(d, 81)));
    Rig.pulses(5);
    assertThat(rig.has("finding-95")).isTrue();
    Node row = rig.node("finding-81");
    Bounds at = Rig.get(() -> row.localToScene(row.getLayoutBounds()));
    assertThat(at.getMinY()).isBetween(0.0, 800.0);
    assertThat(at.getMaxY()).isBetween(0.0, 800.0);
    // Page Up goes round to the one before.
    rig.act(() -> rig.node("finding-81").requestFocus());
    rig.key(KeyCode.PAGE_UP);
    assertThat(rig.desk().sight().finding()).hasValue(80);
  }
}
