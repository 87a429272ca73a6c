package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** F1 explains what is at hand; keys do what hands are used to. */
@ExtendWith(NeedsWindow.class)
class HelpInTheWindowTest {
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig(1280, 800);
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private String help() {
    rig.key(KeyCode.F1);
    String key = rig.desk().notice().orElseThrow().key();
    assertThat(rig.desk().notice().orElseThrow().lines()).hasSizeBetween(2, 6);
    rig.clickOn("notice-putAway");
    return key;
  }

  @Test
  void eachStepHasItsOwnWords() {
    assertThat(help()).isEqualTo("window.notice.helpDraw");
    rig.drawn("20'", "30' turn left", "20' turn left");
    assertThat(help()).isEqualTo("window.notice.helpOutline");
    rig.key(KeyCode.CONTROL, KeyCode.J);
    assertThat(help()).isEqualTo("window.notice.helpLine");
    rig.key(KeyCode.ESCAPE).key(KeyCode.CONTROL, KeyCode.R);
    assertThat(help()).isEqualTo("window.notice.helpShape");
    rig.key(KeyCode.ESCAPE).clickOn("step-section");
    assertThat(help()).isEqualTo("window.notice.helpSection");
    rig.clickOn("step-joints");
    assertThat(help()).isEqualTo("window.notice.helpJoints");
    rig.clickOn("step-sheets");
    assertThat(help()).isEqualTo("window.notice.helpSheets");
  }

  @Test
  void aSideIsUndoneByTheButtonWhileASlabIsDrawn() {
    rig.type("20'").key(KeyCode.ENTER).type("30' turn left").key(KeyCode.ENTER);
    assertThat(rig.text("undo")).isEqualTo("Undo “draw a side”");
    rig.clickOn("undo");
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(2);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.desk().draft().orElseThrow().placed()).hasSize(1);
  }

  @Test
  void whatIsPickedIsCopiedByTheUsualKeysEachCopyBesideTheOthers() {
    rig.drawn("10'", "8' turn left", "10' turn left").click(new Point(60, 48));
    rig.key(KeyCode.CONTROL, KeyCode.C);
    for (int i = 2; i <= 6; i++) {
      rig.key(KeyCode.CONTROL, KeyCode.V);
      assertThat(rig.plan().slabs()).hasSize(i);
    }
    var slabs = rig.plan().slabs();
    for (var a : slabs) {
      assertThat(slabs)
          .filteredOn(b -> !b.equals(a))
          .noneMatch(b -> b.outline().ring().box().meets(a.outline().ring().box()));
    }
    rig.laid().key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().slabs()).hasSize(5);
  }
}
