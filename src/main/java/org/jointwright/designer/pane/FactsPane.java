package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jointwright.designer.facts.Deed;
import org.jointwright.designer.facts.Facts;
import org.jointwright.designer.facts.FactsOf;
import org.jointwright.designer.facts.Row;
import org.jointwright.designer.node.Flowing;
import org.jointwright.designer.node.WholeWords;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;

/** The facts of what is picked: name, kind, rows, buttons, why. */
final class FactsPane extends VBox {
  /** The longest word of a head that is kept whole, pixels of the look. */
  private static final double WORD = 130;

  private final Board board;
  private final JobWork job;
  private final Runnable toPlan;
  private List<String> shape = List.of();
  private Pick pick = Pick.NOTHING;
  private List<RowNode> rows = List.of();
  private List<Deed> deeds = List.of();
  private List<Facts.Note> shown = List.of();
  private final VBox notes = new VBox(6);
  private final Label title = new WholeWords(WORD);
  private final Label kind = new WholeWords(WORD);
  private final Node head = head();

  /**
   * The facts of {@code board}.
   *
   * @param toPlan gives the focus to the plan, when the button that had it is gone
   */
  FactsPane(Board board, JobWork job, Runnable toPlan) {
    this.board = board;
    this.toPlan = toPlan;
    this.job = job;
    getStyleClass().add("facts");
    setId("facts");
    notes.setId("facts-notes");
    board.watch(this::show);
  }

  private void show(Desk desk) {
    Facts facts = FactsOf.desk(desk, board.words());
    deeds = facts.deeds().stream().filter(d -> !d.isQuiet()).toList();
    title.setText(facts.title());
    kind.setText(facts.kind());
    show(facts.notes());
    if (facts.shape().equals(shape) && desk.picked().equals(pick)) {
      for (int i = 0; i < rows.size(); i++) {
        rows.get(i).update(facts.rows().get(i));
      }
      return;
    }
    Optional<RowNode> typedIn =
        desk.picked().equals(pick)
            ? rows.stream().filter(RowNode::isFocused).findFirst()
            : Optional.empty();
    shape = facts.shape();
    pick = desk.picked();
    rebuild(facts, typedIn);
  }

  /** Shows what is said; it may come later than the rows, in which a hand may be typing. */
  private void show(List<Facts.Note> said) {
    if (said.equals(shown)) {
      return;
    }
    shown = said;
    notes.getChildren().setAll(said.stream().map(NoteNode::of).toList());
  }

  /**
   * Makes the rows anew.
   *
   * @param typedIn the row of the same thing in which a hand is: it goes on where it was
   */
  private void rebuild(Facts facts, Optional<RowNode> typedIn) {
    Optional<String> focused =
        rows.stream().filter(RowNode::isFocused).map(r -> r.row().id()).findFirst();
    boolean hadFocus = holdsFocus();
    Optional<String> after = typedIn.flatMap(r -> besides(r, facts));
    rows = facts.rows().stream().map(r -> RowNode.of(r, board)).toList();
    List<Node> all = new ArrayList<>();
    all.add(head);
    Region rule = new Region();
    rule.getStyleClass().add("chalk-rule");
    all.add(rule);
    all.addAll(rows.stream().map(RowNode::node).toList());
    if (!deeds.isEmpty()) {
      all.add(buttons(deeds));
    }
    all.add(notes);
    // The old rows go last: a text that is being typed in one moves on before it loses the focus.
    List<Node> old = new ArrayList<>(getChildren());
    old.removeAll(List.of(head, notes));
    getChildren().removeAll(head, notes);
    getChildren().addAll(all);
    for (RowNode r : rows) {
      if (focused.equals(Optional.of(r.row().id()))) {
        typedIn.ifPresentOrElse(r::goOnFrom, r::focus);
      } else if (after.equals(Optional.of(r.row().id()))) {
        r.focus();
      }
    }
    getChildren().removeAll(old);
    if (hadFocus && !holdsFocus()) {
      toPlan.run();
    }
  }

  /**
   * The row to go on with after one that is there no longer: what stands now behind the nearest row
   * before it that stays, or else that one itself. Empty where the row stays.
   */
  private Optional<String> besides(RowNode gone, Facts facts) {
    List<String> now = facts.rows().stream().map(Row::id).toList();
    if (now.contains(gone.row().id())) {
      return Optional.empty();
    }
    int last =
        rows.subList(0, rows.indexOf(gone)).stream()
            .mapToInt(r -> now.indexOf(r.row().id()))
            .max()
            .orElse(-1);
    List<Row> all = facts.rows();
    return Stream.concat(
            all.subList(last + 1, all.size()).stream(),
            all.subList(0, last + 1).reversed().stream())
        .filter(r -> !(r instanceof Row.Shown))
        .map(Row::id)
        .findFirst();
  }

  /** Begins to type anew the first fact that can be typed; whether there is one. */
  boolean type(String begun) {
    Optional<RowNode> first = rows.stream().filter(r -> r.row() instanceof Row.Typed).findFirst();
    first.ifPresent(r -> r.type(begun));
    return first.isPresent();
  }

  private boolean holdsFocus() {
    Node n = getScene() == null ? null : getScene().getFocusOwner();
    while (n != null && !n.equals(this)) {
      n = n.getParent();
    }
    return n != null;
  }

  private Node head() {
    title.getStyleClass().add("pane-head");
    title.setId("facts-title");
    kind.getStyleClass().add("quiet-label");
    kind.setTextAlignment(TextAlignment.RIGHT);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox line = new HBox(8, title, gap, kind);
    line.setAlignment(Pos.BASELINE_LEFT);
    line.setMinHeight(Region.USE_PREF_SIZE);
    return line;
  }

  private Node buttons(List<Deed> all) {
    Flowing pane = new Flowing(10, 8);
    pane.getStyleClass().add("deeds");
    for (int i = 0; i < all.size(); i++) {
      int index = i;
      Button button = new Button(all.get(i).label());
      button.setId("deed-" + all.get(i).id());
      button.setOnAction(e -> job.act(deeds.get(index)));
      pane.add(button);
    }
    return pane;
  }
}
