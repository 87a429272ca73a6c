package org.jointwright.designer.pane;

import java.util.List;
import javafx.event.ActionEvent;
import javafx.event.EventHandler;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.facts.HeadFacts;
import org.jointwright.designer.facts.Marking;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Point;

/** The menus: the job, changing it, looking at it, help. */
final class Menus {
  private static final double LARGER = 1.25;

  private final Board board;
  private final JobWork job;
  private List<Thing> copied = List.of();

  Menus(Board board, JobWork job) {
    this.board = board;
    this.job = job;
  }

  MenuBar bar() {
    MenuBar bar = new MenuBar(jobMenu(), changeMenu(), viewMenu(), helpMenu());
    bar.setId("menus");
    return bar;
  }

  private Menu jobMenu() {
    Menu menu = new Menu(board.say("window.menu.job"));
    menu.getItems()
        .addAll(
            item("new", ctrl(KeyCode.N), e -> job.next(Notice.Next.BEGIN)),
            item("open", ctrl(KeyCode.O), e -> job.next(Notice.Next.OPEN)),
            new RecentMenu(board, job).menu(),
            item("save", ctrl(KeyCode.S), e -> job.save()),
            item("saveAs", ctrlShift(KeyCode.S), e -> job.saveAs()),
            new SeparatorMenuItem(),
            item("sheets", null, e -> job.sheets()),
            item("print", ctrl(KeyCode.P), e -> job.print()),
            new SeparatorMenuItem(),
            item("close", ctrl(KeyCode.Q), e -> job.next(Notice.Next.CLOSE)));
    return menu;
  }

  private Menu changeMenu() {
    Menu menu = new Menu(board.say("window.menu.change"));
    Menu withPicked = new Menu(board.say("window.menu.withPicked"));
    withPicked.setId("menu-withPicked");
    MenuItem undo = item("undo", ctrl(KeyCode.Z), e -> board.change(Desk::undone));
    MenuItem redo = item("redo", ctrl(KeyCode.Y), e -> board.change(Desk::redone));
    menu.getItems()
        .addAll(
            undo,
            redo,
            new SeparatorMenuItem(),
            item("drawSlab", ctrl(KeyCode.D), e -> board.change(Drafting::begin)),
            item("readyShape", ctrl(KeyCode.R), e -> board.change(SetDown::begin)),
            item("drawStrip", null, e -> draw(Drawn.STRIP)),
            item("photo", null, e -> job.photo()),
            item("drawZone", null, e -> draw(Drawn.ZONE)),
            item("drawJoint", ctrl(KeyCode.J), e -> draw(Drawn.JOINT)),
            item("drawOldJoint", null, e -> draw(Drawn.OLD_JOINT)),
            item("markSide", null, e -> board.change(d -> Marking.side(d))),
            item("cutTip", null, e -> board.change(d -> Marking.tip(d, board.words()))),
            item("pour", null, e -> board.change(Marking::pour)),
            item("copy", ctrl(KeyCode.C), e -> copied = Things.of(board.desk().picked())),
            item("setCopyDown", ctrl(KeyCode.V), e -> board.change(d -> Whole.copied(d, still(d)))),
            item("takeOut", null, e -> board.change(d -> FactsOf.takenOut(d, board.words()))),
            withPicked);
    menu.setOnShowing(
        e -> {
          withPicked.getItems().setAll(PlanMenu.items(board, job, "picked-"));
          withPicked.setDisable(withPicked.getItems().isEmpty());
        });
    board.watch(
        d -> {
          HeadFacts head = HeadFacts.of(d, board.words());
          undo.setDisable(head.undo().isEmpty());
          redo.setDisable(head.redo().isEmpty());
          undo.setText(named("window.bar.undo", "window.menu.undo", head.undo()));
          redo.setText(named("window.bar.redo", "window.menu.redo", head.redo()));
        });
    return menu;
  }

  /** What was copied and is there still. */
  private List<Thing> still(Desk desk) {
    return desk.draft().isPresent()
        ? List.of()
        : copied.stream().filter(t -> t.isIn(desk.plan())).toList();
  }

  private void draw(Drawn what) {
    board.change(d -> Drafting.begin(d, what));
  }

  private String named(String key, String bare, java.util.Optional<String> what) {
    return what.map(w -> board.say(key, w)).orElseGet(() -> board.say(bare));
  }

  private Menu viewMenu() {
    Menu menu = new Menu(board.say("window.menu.view"));
    menu.getItems()
        .addAll(
            item("fit", ctrl(KeyCode.DIGIT0), e -> board.change(Desk::fitted)),
            item("larger", ctrl(KeyCode.EQUALS), e -> zoom(LARGER)),
            item("smaller", ctrl(KeyCode.MINUS), e -> zoom(1 / LARGER)),
            new SeparatorMenuItem());
    menu.getItems().addAll(new SettingsMenus(board).all());
    return menu;
  }

  private void zoom(double factor) {
    board.change(
        d ->
            d.withSight(
                s -> {
                  Point middle = new Point(s.viewport().width() / 2, s.viewport().height() / 2);
                  return s.with(s.viewport().zoomed(middle, factor), false);
                }));
  }

  private Menu helpMenu() {
    Menu menu = new Menu(board.say("window.menu.help"));
    menu.getItems()
        .addAll(
            item(
                "here",
                new KeyCodeCombination(KeyCode.F1),
                e -> board.change(d -> d.told(HelpHere.of(d, board)))),
            item("typing", null, e -> tell("window.notice.typing")),
            item("keys", null, e -> tell("window.notice.keys")),
            item("caution", null, e -> tell("window.notice.caution")));
    return menu;
  }

  private void tell(String key) {
    board.change(d -> d.told(HelpHere.explained(key, board)));
  }

  private MenuItem item(
      String name,
      @org.jspecify.annotations.Nullable KeyCombination key,
      EventHandler<ActionEvent> action) {
    MenuItem item = new MenuItem(board.say("window.menu." + name));
    item.setId("menu-" + name);
    if (key != null) {
      item.setAccelerator(key);
    }
    item.setOnAction(action);
    return item;
  }

  private static KeyCombination ctrl(KeyCode code) {
    return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
  }

  private static KeyCombination ctrlShift(KeyCode code) {
    return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
  }
}
