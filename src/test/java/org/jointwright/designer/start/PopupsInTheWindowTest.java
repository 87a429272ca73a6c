package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.stage.PopupWindow;
import javafx.stage.Window;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.TextSize;
import org.jointwright.designer.state.SetDown;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What opens over the window is as large as the window is. */
@ExtendWith(NeedsWindow.class)
class PopupsInTheWindowTest {
  private static void sizes(Node node, Set<Double> into) {
    if (node instanceof Labeled l
        && l.isVisible()
        && l.getText() != null
        && !l.getText().isEmpty()) {
      into.add(Math.round(l.getFont().getSize() * 10) / 10.0);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(c -> sizes(c, into));
    }
  }

  /** The sizes of all that is written in what is open. */
  private static Set<Double> sizes() {
    return Rig.get(
        () -> {
          Set<Double> sizes = new TreeSet<>();
          List.copyOf(Window.getWindows()).stream()
              .filter(PopupWindow.class::isInstance)
              .forEach(w -> sizes(w.getScene().getRoot(), sizes));
          return sizes;
        });
  }

  @ParameterizedTest
  @CsvSource({"USUAL, 15", "LARGER, 18.8", "LARGEST, 22.5"})
  void menusAndListsAreEnlargedWithTheWindow(TextSize text, double size) {
    try (Rig rig = new Rig(980, 720, Settings.FIRST.with(Look.LIGHT).with(text))) {
      MenuBar bar = (MenuBar) rig.node("menus");
      rig.act(() -> bar.getMenus().getFirst().show());
      assertThat(sizes()).containsExactly(size);
      rig.act(() -> bar.getMenus().getFirst().hide());
      rig.act(() -> rig.designer().board().change(SetDown::begin));
      ComboBox<?> box = (ComboBox<?>) rig.node("row-ready-kind");
      rig.act(box::show);
      assertThat(sizes()).containsExactly(size);
      rig.act(box::hide);
    }
  }
}
