package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.designer.facts.ChoiceFacts;
import org.jointwright.designer.state.Desk;

/** The other layouts of the slab that is picked, and how good its own is, when asked for. */
final class LayoutsPane extends VBox {
  /** So many are shown at most; where there are fewer it is said why. */
  private static final int MOST = 3;

  private final Board board;
  private final Brush brush;
  private final Label link = LayoutCard.wrapped("", "link");
  private final Label few = LayoutCard.wrapped("", "source");
  private final NearNode near;
  private final VBox content = new VBox(8);
  private final Consumer<String> whenAsked;
  private Optional<ChoiceFacts> shown = Optional.empty();
  private List<LayoutCard> cards = List.of();

  /**
   * On a board.
   *
   * @param whenAsked done with the id of its row once the layouts are asked for: they come in under
   *     it, where it may be out of sight
   */
  LayoutsPane(Board board, Brush brush, Consumer<String> whenAsked) {
    super(10);
    this.board = board;
    this.brush = brush;
    this.whenAsked = whenAsked;
    setId("layouts");
    HBox.setHgrow(link, Priority.ALWAYS);
    PressedRow row =
        new PressedRow("layouts-other", board.say("window.layouts.other"), this::turn, link);
    few.setText(board.say("window.layouts.few"));
    few.setId("layouts-few");
    near = new NearNode(board);
    getChildren().setAll(near, row, content);
    board.watch(this::show);
  }

  private void turn() {
    shown.ifPresent(c -> board.change(c::turned));
  }

  private void show(Desk desk) {
    Optional<ChoiceFacts> now = ChoiceFacts.of(desk, board.words());
    now.ifPresent(c -> near.show(desk, c.slab()));
    if (!now.equals(shown)) {
      boolean wasAsked = shown.filter(ChoiceFacts::isAsked).isPresent();
      if (!wasAsked && now.filter(ChoiceFacts::isAsked).isPresent()) {
        whenAsked.accept("#layouts-other");
      }
      shown = now;
      now.ifPresent(this::show);
    }
    setVisible(now.isPresent());
    setManaged(now.isPresent());
  }

  private void show(ChoiceFacts facts) {
    link.setText(board.say(facts.isAsked() ? "window.layouts.away" : "window.layouts.other"));
    List<ChoiceFacts.One> ones = facts.isOnlyOne() ? List.of() : facts.choices().orElse(List.of());
    if (!isShown(facts.slab(), ones)) {
      cards = LayoutCard.all(board, brush, facts.slab(), ones);
    }
    for (int i = 0; i < ones.size(); i++) {
      cards.get(i).mark(ones.get(i));
    }
    List<Node> nodes = new ArrayList<>();
    cards.forEach(c -> nodes.add(c.node()));
    nodes.addAll(ones.isEmpty() ? said(facts) : ones.size() < MOST ? List.of(few) : List.of());
    if (!content.getChildren().equals(nodes)) {
      content.getChildren().setAll(nodes);
    }
  }

  private boolean isShown(String slab, List<ChoiceFacts.One> ones) {
    if (ones.size() != cards.size()) {
      return false;
    }
    for (int i = 0; i < ones.size(); i++) {
      if (!cards.get(i).shows(slab, ones.get(i))) {
        return false;
      }
    }
    return true;
  }

  private List<Label> said(ChoiceFacts facts) {
    if (!facts.isAsked()) {
      return List.of();
    }
    String key = facts.isOnlyOne() ? "window.layouts.none" : "window.layouts.working";
    Label label = LayoutCard.wrapped(board.say(key), "source");
    label.setId("layouts-said");
    return List.of(label);
  }
}
