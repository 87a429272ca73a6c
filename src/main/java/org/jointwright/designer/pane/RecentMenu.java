package org.jointwright.designer.pane;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import org.jointwright.designer.state.Notice;

/** The plans that were opened or saved lately, each by its name and its folder. */
final class RecentMenu {
  private static final String ENDING = ".jointwright.json";

  private final Board board;
  private final JobWork job;
  private final Menu menu;

  RecentMenu(Board board, JobWork job) {
    this.board = board;
    this.job = job;
    menu = new Menu(board.say("window.menu.recent"));
    menu.setId("menu-recent");
    fill();
    // Looked up anew each time: another window may have opened one since.
    menu.setOnShowing(e -> fill());
  }

  Menu menu() {
    return menu;
  }

  private void fill() {
    List<Path> plans = job.recent();
    if (plans.isEmpty()) {
      MenuItem none = new MenuItem(board.say("window.menu.recentNone"));
      none.setDisable(true);
      menu.getItems().setAll(none);
      return;
    }
    menu.getItems().setAll(plans.stream().map(this::item).toList());
  }

  private MenuItem item(Path plan) {
    String name = String.valueOf(plan.getFileName());
    String job = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    String folder =
        Optional.ofNullable(plan.getParent()).map(Path::getFileName).map(Path::toString).orElse("");
    MenuItem item = new MenuItem(board.say("window.menu.recentOne", job, folder));
    // An underscore in a file’s name is no letter to be pressed.
    item.setMnemonicParsing(false);
    item.setOnAction(e -> this.job.next(Notice.Next.opening(plan)));
    return item;
  }
}
