package org.jointwright.designer.pane;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.scene.control.Menu;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleGroup;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.TextSize;
import org.jointwright.text.Language;

/** What can be chosen of the window itself: its language, measures, look and size of text. */
final class SettingsMenus {
  private final Board board;

  SettingsMenus(Board board) {
    this.board = board;
  }

  List<Menu> all() {
    Settings now = board.settings();
    return List.of(
        menu("language", Language.values(), now.language(), this::name, v -> s -> s.with(v)),
        menu("measures", Measures.values(), now.measures(), this::name, v -> s -> s.with(v)),
        menu("look", Look.values(), now.look(), this::name, v -> s -> s.with(v)),
        menu("text", TextSize.values(), now.text(), this::name, v -> s -> s.with(v)));
  }

  /** In its own words, whatever the window speaks: whoever looks for it may know no others. */
  private String name(Language language) {
    String name = board.say("window.language." + language.code());
    return language.isChecked() ? name : board.say("window.language.unchecked", name);
  }

  private String name(Measures value) {
    return board.say("window.measures." + word(value));
  }

  private String name(Look value) {
    return board.say("window.look." + word(value));
  }

  private String name(TextSize value) {
    return board.say("window.text." + word(value));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private <E extends Enum<E>> Menu menu(
      String name,
      E[] values,
      E chosen,
      Function<E, String> names,
      Function<E, UnaryOperator<Settings>> choice) {
    Menu menu = new Menu(board.say("window.menu." + name));
    menu.setId("menu-" + name);
    ToggleGroup group = new ToggleGroup();
    for (E value : values) {
      RadioMenuItem item = new RadioMenuItem(names.apply(value));
      item.setId("menu-" + name + "-" + word(value));
      item.setToggleGroup(group);
      item.setSelected(value == chosen);
      // Once the menu is gone: the window is made anew, and the menu with it.
      item.setOnAction(e -> Platform.runLater(() -> board.settle(choice.apply(value))));
      menu.getItems().add(item);
    }
    return menu;
  }
}
