package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jointwright.designer.facts.Deed;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.hand.UnderPointer;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Things;
import org.jointwright.shape.Point;

/** The menu of what can be done with what lies under the pointer, or is picked. */
final class PlanMenu {
  private final Board board;
  private final PlanPane paper;
  private final JobWork job;
  private Optional<ContextMenu> menu = Optional.empty();

  PlanMenu(Board board, PlanPane paper, JobWork job) {
    this.board = board;
    this.paper = paper;
    this.job = job;
    paper.setOnContextMenuRequested(this::asked);
    paper.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** The items for what is picked, in the order of its buttons. */
  static List<MenuItem> items(Board board, JobWork job, String prefix) {
    List<MenuItem> items = new ArrayList<>();
    for (Deed deed : FactsOf.desk(board.desk(), board.words()).deeds()) {
      MenuItem item = new MenuItem(deed.label());
      item.setMnemonicParsing(false);
      item.setId(prefix + deed.id());
      item.setOnAction(e -> job.act(deed));
      items.add(item);
    }
    return items;
  }

  private void asked(ContextMenuEvent e) {
    if (e.isKeyboardTrigger()) {
      showAtPick();
    } else {
      Point at = board.desk().viewport().toPlan(new Point(e.getX(), e.getY()));
      pickAt(at);
      show(e.getScreenX(), e.getScreenY(), Optional.of(at));
    }
    e.consume();
  }

  private void pressed(KeyEvent e) {
    if (e.getCode() == KeyCode.CONTEXT_MENU && menu.filter(ContextMenu::isShowing).isEmpty()) {
      showAtPick();
      e.consume();
    }
  }

  /** What lies there is picked, unless it is one of several that are. */
  private void pickAt(Point at) {
    Desk desk = board.desk();
    if (desk.draft().isPresent() || desk.hand().hold().isPresent()) {
      return;
    }
    Pick under = UnderPointer.of(desk, at);
    boolean isOneOfThem =
        desk.picked() instanceof Pick.Several s
            && !Things.of(under).isEmpty()
            && s.things().containsAll(Things.of(under));
    if (!isOneOfThem) {
      board.change(d -> d.picking(under));
    }
  }

  private void showAtPick() {
    Desk desk = board.desk();
    Point middle = new Point(paper.getWidth() / 2, paper.getHeight() / 2);
    Point on = Picks.place(desk.plan(), desk.picked()).map(desk.viewport()::toPaper).orElse(middle);
    Point2D screen = paper.localToScreen(on.x(), on.y());
    show(screen.getX(), screen.getY(), Optional.empty());
  }

  /** Made when it is first asked for: it is a window of its own, and the first one waits for it. */
  private ContextMenu made() {
    ContextMenu made = menu.orElseGet(ContextMenu::new);
    made.setId("plan-menu");
    menu = Optional.of(made);
    return made;
  }

  private void show(double screenX, double screenY, Optional<Point> at) {
    ContextMenu menu = made();
    menu.hide();
    menu.getItems().setAll(items(board, job, "here-"));
    // With the pointer on a side the corner comes where it points.
    if (board.desk().picked() instanceof Pick.AtEdge side) {
      at.ifPresent(
          p ->
              menu.getItems().stream()
                  .filter(i -> i.getId().equals("here-add-corner"))
                  .forEach(
                      i ->
                          i.setOnAction(
                              e -> board.change(d -> SideShape.cornerOn(d, side.edge(), p)))));
    }
    if (!menu.getItems().isEmpty()) {
      menu.show(paper, screenX, screenY);
    }
  }
}
