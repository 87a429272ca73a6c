package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.assertj.core.data.Offset;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.settings.RecentFiles;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.SettingsPlace;
import org.jointwright.designer.settings.TextSize;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Ref;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Language, measures, look and size, chosen in the menus while the work lies on the desk. */
@ExtendWith(NeedsWindow.class)
class SettingsInTheWindowTest {
  private static MenuItem item(Rig rig, String id) {
    MenuBar bar = (MenuBar) rig.node("menus");
    List<MenuItem> all = new ArrayList<>();
    bar.getMenus().forEach(m -> collect(m, all));
    return all.stream().filter(i -> id.equals(i.getId())).findFirst().orElseThrow();
  }

  private static void collect(MenuItem item, List<MenuItem> into) {
    into.add(item);
    if (item instanceof Menu menu) {
      menu.getItems().forEach(i -> collect(i, into));
    }
  }

  private static void choose(Rig rig, String id) {
    MenuItem item = Rig.get(() -> item(rig, id));
    rig.act(item::fire);
    rig.act(() -> {});
  }

  private static double length(Plan plan) {
    return plan.slabs().getFirst().outline().ring().edges().getFirst().length();
  }

  @Test
  void theLanguageTurnsWithTheWorkOnTheDesk() {
    try (Rig rig = new Rig()) {
      rig.drawn("24'", "12' turn left", "24' turn left");
      Plan before = rig.plan();
      String slab = before.slabs().getFirst().id();
      rig.act(() -> rig.designer().board().change(d -> d.picking(new Pick.WholeSlab(slab))));
      choose(rig, "menu-language-spanish");
      assertThat(rig.text("plan-head")).isEqualTo("Contorno");
      assertThat(rig.title()).contains("sin guardar");
      assertThat(rig.text("language-note")).contains("acabador");
      assertThat(rig.plan()).isEqualTo(before);
      assertThat(rig.desk().picked()).isEqualTo(new Pick.WholeSlab(slab));
      rig.key(KeyCode.CONTROL, KeyCode.Z).laid();
      assertThat(rig.plan().slabs()).isEmpty();
      rig.key(KeyCode.CONTROL, KeyCode.Y).laid();
      assertThat(rig.plan().slabs()).hasSize(1);
      choose(rig, "menu-language-english");
      assertThat(rig.text("plan-head")).isEqualTo("Outline");
      assertThat(rig.has("language-note")).isFalse();
    }
  }

  @Test
  void aSpanishWindowUnderstandsSpanishSentences() {
    try (Rig rig = new Rig(980, 720, Settings.FIRST.with(Language.SPANISH))) {
      for (String side : List.of("20'", "10' arriba", "20' izquierda afuera 2'")) {
        rig.type(side).key(KeyCode.ENTER);
      }
      rig.type("cerrar").key(KeyCode.ENTER).laid();
      assertThat(rig.plan().slabs()).singleElement().extracting(s -> s.id()).isEqualTo("losa 1");
      assertThat(rig.plan().slabs().getFirst().region().area()).isGreaterThan(200 * 144);
    }
  }

  @Test
  void measuresTurnAndThePlanStays() {
    try (Rig rig = new Rig()) {
      rig.drawn("24'", "12' turn left", "24' turn left");
      Plan before = rig.plan();
      choose(rig, "menu-measures-metric");
      rig.act(() -> rig.designer().board().change(d -> d.picking(Pick.NOTHING)));
      assertThat(rig.text("row-job-area")).contains("m²");
      assertThat(rig.plan()).isEqualTo(before);
      rig.act(
          () ->
              rig.designer()
                  .board()
                  .change(
                      d ->
                          d.picking(
                              new Pick.AtEdge(Ref.outline(before.slabs().getFirst().id(), 0)))));
      rig.fill("edge-length", "8").laid();
      assertThat(length(rig.plan())).isCloseTo(8000 / 25.4, within());
      assertThat(rig.plan().unit()).isEqualTo(LengthUnit.FOOT);
    }
  }

  private static Offset<Double> within() {
    return Offset.offset(0.01);
  }

  @Test
  void aPlanBegunInMetresIsWrittenInMetres() {
    try (Rig rig = new Rig(980, 720, Settings.FIRST.with(Measures.METRIC))) {
      rig.drawn("6", "4 turn left", "6 turn left");
      assertThat(rig.plan().unit()).isEqualTo(LengthUnit.METRE);
      assertThat(length(rig.plan())).isCloseTo(6000 / 25.4, within());
    }
    try (Rig rig = new Rig()) {
      rig.act(() -> rig.designer().board().settle(s -> s.with(Measures.METRIC)));
      assertThat(rig.plan().unit()).isEqualTo(LengthUnit.METRE);
    }
  }

  @Test
  void theWindowTurnsDarkAndLarge() {
    try (Rig rig = new Rig()) {
      rig.drawn("24'", "12' turn left", "24' turn left");
      choose(rig, "menu-look-dark");
      var dark = Rig.get(() -> rig.designer().picture(1280, 800));
      assertThat(dark.getPixelReader().getColor(700, 700)).isEqualTo(Color.web("#363A3B"));
      assertThat(dark.getPixelReader().getColor(20, 700)).isEqualTo(Color.web("#2E3233"));
      choose(rig, "menu-text-largest");
      assertThat(rig.desk().viewport().width()).isLessThan(500);
      var large = Rig.get(() -> rig.designer().picture(1280, 800));
      // The bar is 40 high, half as much again where everything is.
      assertThat(large.getPixelReader().getColor(640, 55)).isEqualTo(Color.web("#2E3233"));
      assertThat(dark.getPixelReader().getColor(500, 55)).isEqualTo(Color.web("#363A3B"));
      assertThat(rig.plan().slabs()).hasSize(1);
    }
  }

  @Test
  void whatIsChosenIsRemembered() {
    List<Settings> kept = new ArrayList<>();
    SettingsPlace place =
        new SettingsPlace() {
          @Override
          public Settings read() {
            return Settings.FIRST;
          }

          @Override
          public void write(Settings settings) {
            kept.add(settings);
          }
        };
    try (Rig rig = new Rig(980, 720, new Memory(place, RecentFiles.NONE))) {
      choose(rig, "menu-look-light");
      choose(rig, "menu-text-larger");
    }
    assertThat(kept)
        .containsExactly(
            Settings.FIRST.with(Look.LIGHT), Settings.FIRST.with(Look.LIGHT).with(TextSize.LARGER));
  }
}
