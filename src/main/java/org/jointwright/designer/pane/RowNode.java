package org.jointwright.designer.pane;

import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jointwright.designer.facts.BadFigure;
import org.jointwright.designer.facts.Row;
import org.jointwright.designer.node.WholeWords;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.LengthFormatException;
import org.jointwright.text.Units;

/** One fact in its row: what it is called, and its value, boxed where it can be typed. */
final class RowNode {
  /** The longest word of a label that is kept whole, pixels of the look. */
  private static final double LABEL = 120;

  /** A text of more letters than this has no room in a field of the usual width. */
  private static final int SHORT = 11;

  private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");

  private final Board board;
  private final Label label = new WholeWords(LABEL);
  private final Label trouble = new Label();
  private final Control value;
  private final VBox node;
  private Row row;
  private boolean isShowing;

  /** Whether what was begun in it goes on in another node: nothing of it is taken. */
  private boolean isReplaced;

  /** Whether its text is being taken just now: it is no longer being typed. */
  private boolean isTaking;

  private RowNode(Row row, Board board) {
    this.row = row;
    this.board = board;
    value =
        switch (row) {
          case Row.Shown s -> shown();
          case Row.Typed t -> typed();
          case Row.Choice c -> choice(c);
          case Row.Tick t -> tick();
        };
    value.setId("row-" + row.id());
    value.getStyleClass().add("value");
    label.getStyleClass().add("row-label");
    label.setLabelFor(value);
    trouble.getStyleClass().add("trouble");
    trouble.setWrapText(true);
    trouble.setMinHeight(Region.USE_PREF_SIZE);
    trouble.setId("trouble-" + row.id());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox line = new HBox(6, label, gap, value);
    line.setAlignment(Pos.CENTER_LEFT);
    line.getStyleClass().add("row");
    node = new VBox(line);
    update(row);
  }

  static RowNode of(Row row, Board board) {
    return new RowNode(row, board);
  }

  Node node() {
    return node;
  }

  Row row() {
    return row;
  }

  /** Whether the fact has the focus. */
  boolean isFocused() {
    return value.isFocused();
  }

  /** Gives the fact the focus, and has it take keys at once: without looks a field takes none. */
  void focus() {
    value.requestFocus();
    value.applyCss();
  }

  /** Takes the focus, and what is being typed if anything, from another node of this fact. */
  void goOnFrom(RowNode other) {
    other.isReplaced = true;
    if (value instanceof TextField own
        && other.value instanceof TextField theirs
        && other.row instanceof Row.Typed was
        && !other.isTaking
        && !theirs.getText().equals(was.value())) {
      // Read first: what loses the focus shows the fact again.
      String text = theirs.getText();
      int anchor = theirs.getAnchor();
      int caret = theirs.getCaretPosition();
      // A field picks all its text as it gets its looks: what is picked comes after.
      focus();
      own.setText(text);
      own.selectRange(anchor, caret);
    } else {
      focus();
    }
  }

  /** Gives a fact that can be typed the focus, with the beginning of what is typed. */
  void type(String begun) {
    if (value instanceof TextField field) {
      focus();
      field.setText(begun);
      field.positionCaret(begun.length());
    }
  }

  /** Shows the fact as it is now; a text that is being typed is left alone. */
  void update(Row now) {
    boolean isTyped = isTyped();
    row = now;
    isShowing = true;
    label.setText(now.label());
    switch (now) {
      case Row.Shown s -> ((Label) value).setText(Units.bound(s.value()));
      case Row.Typed t -> {
        TextField field = (TextField) value;
        field.pseudoClassStateChanged(LONG, t.value().length() > SHORT);
        if (!isTyped && !field.getText().equals(t.value())) {
          field.setText(t.value());
          if (field.isFocused()) {
            field.selectAll();
          }
        }
      }
      case Row.Choice c -> ((ComboBox<?>) value).getSelectionModel().select(c.chosen());
      case Row.Tick t -> ((CheckBox) value).setSelected(t.isOn());
    }
    isShowing = false;
    speak();
  }

  /**
   * Whether something is being typed. A field that only has the focus shows the fact as it is: left
   * with an older one, it would put that back.
   */
  private boolean isTyped() {
    return value instanceof TextField field
        && row instanceof Row.Typed was
        && field.isFocused()
        && !field.getText().isEmpty()
        && !field.getText().equals(was.value());
  }

  /** What a screen reader reads: a text of its own hides the field's, so it holds both. */
  private void speak() {
    value.setAccessibleText(
        value instanceof TextField field
            ? board.say("window.row.spoken", row.label(), field.getText())
            : value instanceof CheckBox ? row.label() : PlanSpoken.row(row, board.words()));
  }

  /** A long word goes on below; beside it the name of the fact would have no room. */
  private static Label shown() {
    Label shown = new Label();
    shown.setWrapText(true);
    shown.setAlignment(Pos.CENTER_RIGHT);
    shown.setTextAlignment(TextAlignment.RIGHT);
    return shown;
  }

  private TextField typed() {
    TextField field = new TextField();
    field.setPrefColumnCount(8);
    field.setOnAction(e -> take(field));
    field.textProperty().addListener((o, was, is) -> speak());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                say("");
              } else {
                take(field);
                // What could not be taken goes, but not why.
                restore(field);
              }
            });
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::undo);
    field.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE && (isTyped() || !trouble.getText().isEmpty())) {
            restore(field);
            say("");
            field.selectAll();
            e.consume();
          }
        });
    return field;
  }

  /**
   * The field itself undoes what is being typed, or was taken out; once that is taken the whole job
   * is meant.
   */
  private void undo(KeyEvent e) {
    boolean isTaken =
        value instanceof TextField field
            && row instanceof Row.Typed was
            && field.getText().equals(was.value());
    boolean isAgain = e.getCode() == KeyCode.Y || (e.getCode() == KeyCode.Z && e.isShiftDown());
    if (isTaken && e.isShortcutDown() && (isAgain || e.getCode() == KeyCode.Z)) {
      board.change(isAgain ? Desk::redone : Desk::undone);
      e.consume();
    }
  }

  private void restore(TextField field) {
    if (row instanceof Row.Typed t) {
      field.setText(t.value());
    }
  }

  private void take(TextField field) {
    if (!isReplaced && row instanceof Row.Typed t && !field.getText().equals(t.value())) {
      isTaking = true;
      boolean isTaken = apply(t.change().apply(field.getText()));
      isTaking = false;
      if (isTaken && row instanceof Row.Typed now) {
        field.setText(now.value());
        field.selectAll();
      }
    }
  }

  private ComboBox<String> choice(Row.Choice c) {
    ComboBox<String> box = new ComboBox<>();
    box.getItems().setAll(c.options());
    // While the list is open the arrows only look; what is left in the box when it closes counts.
    box.setOnAction(
        e -> {
          if (!box.isShowing()) {
            choose(box);
          }
        });
    box.setOnHidden(e -> choose(box));
    return box;
  }

  private void choose(ComboBox<String> box) {
    int i = box.getSelectionModel().getSelectedIndex();
    if (!isShowing && i >= 0 && row instanceof Row.Choice now && i != now.chosen()) {
      apply(now.change().apply(i));
    }
  }

  private CheckBox tick() {
    CheckBox box = new CheckBox();
    box.setOnAction(
        e -> {
          if (row instanceof Row.Tick t) {
            apply(t.change().apply(box.isSelected()));
          }
        });
    return box;
  }

  private boolean apply(UnaryOperator<Desk> change) {
    try {
      board.change(change);
      say("");
      return true;
    } catch (LengthFormatException fault) {
      say(board.words().say(fault));
    } catch (BadFigure fault) {
      say(board.say(fault.key(), fault.arguments()));
    }
    return false;
  }

  private void say(String what) {
    trouble.setText(what);
    if (what.isEmpty()) {
      node.getChildren().remove(trouble);
    } else if (!node.getChildren().contains(trouble)) {
      node.getChildren().add(trouble);
    }
  }
}
