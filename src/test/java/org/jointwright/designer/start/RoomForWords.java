package org.jointwright.designer.start;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** What words of a window lack the room they need. Used on the JavaFX thread. */
final class RoomForWords {
  private static final double SLACK = 0.5;

  private final Parent root;
  private final List<Labeled> labels = new ArrayList<>();
  private final List<TextField> fields = new ArrayList<>();
  private final List<ComboBox<?>> choices = new ArrayList<>();

  private RoomForWords(Parent root) {
    this.root = root;
    collect(root);
  }

  /** What is wrong with the words under {@code root}; nothing where all have their room. */
  static List<String> wanting(Parent root) {
    RoomForWords room = new RoomForWords(root);
    List<String> found = new ArrayList<>();
    room.clipped(found);
    room.typed(found);
    room.chosen(found);
    room.overlapping(found);
    room.outside(found);
    return found;
  }

  private void collect(Node node) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
      labels.add(labeled);
    }
    if (node instanceof ComboBox<?> choice) {
      choices.add(choice);
    }
    if (node instanceof TextField field) {
      fields.add(field);
      return;
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(this::collect);
    }
  }

  private void clipped(List<String> found) {
    for (Labeled l : labels) {
      boolean fits =
          l.isWrapText()
              ? l.getHeight() + SLACK >= l.prefHeight(l.getWidth())
              : l.getWidth() + SLACK >= l.prefWidth(-1);
      if (!fits) {
        found.add("cut short: " + l.getText());
      }
      for (String word : l.getText().split(" ", -1)) {
        if (width(word, l.getFont()) > l.getWidth() - rims(l) + SLACK) {
          found.add("broken within a word: " + word + " of " + l.getText());
        }
      }
    }
  }

  /** Figures stand whole in their boxes; a name that a user gave may be longer and scrolls. */
  private void typed(List<String> found) {
    for (TextField f : fields) {
      boolean isName = f.getId() != null && f.getId().endsWith("-name");
      if (!isName && width(f.getText(), f.getFont()) > inside(f) + SLACK) {
        found.add("longer than its box: " + f.getText());
      }
    }
  }

  /** Whatever may be chosen in a box fits into it: a hair too long, and it ends in three dots. */
  private void chosen(List<String> found) {
    for (ComboBox<?> choice : choices) {
      for (Node shown : choice.getChildrenUnmodifiable()) {
        if (shown instanceof ListCell<?> cell) {
          choice.getItems().stream()
              .map(Object::toString)
              .filter(option -> width(option, cell.getFont()) > inside(cell))
              .forEach(option -> found.add("a choice longer than its box: " + option));
        }
      }
    }
  }

  private static double width(String text, Font font) {
    Text measured = new Text(text);
    measured.setFont(font);
    return measured.getLayoutBounds().getWidth();
  }

  private static double rims(Region box) {
    Insets rim = box.getInsets();
    return rim.getLeft() + rim.getRight();
  }

  private static double inside(Region box) {
    return box.getWidth() - rims(box);
  }

  private void overlapping(List<String> found) {
    List<Labeled> plain = labels.stream().filter(Label.class::isInstance).toList();
    for (int i = 0; i < plain.size(); i++) {
      for (int j = i + 1; j < plain.size(); j++) {
        // A notice lies over all else, on a card of its own.
        boolean isBoth = isNoticed(plain.get(i)) == isNoticed(plain.get(j));
        if (isBoth && inner(plain.get(i)).intersects(inner(plain.get(j)))) {
          found.add("overlap: " + plain.get(i).getText() + " / " + plain.get(j).getText());
        }
      }
    }
  }

  private static boolean isNoticed(@Nullable Node n) {
    return n != null && ("notice".equals(n.getId()) || isNoticed(n.getParent()));
  }

  /** Without the rim, which may touch that of the next, and without what is scrolled out. */
  private static Bounds inner(Node l) {
    Bounds b = seen(l);
    double top = b.getMinY() + 2;
    double foot = b.getMaxY() - 2;
    for (Node p = l.getParent(); p != null; p = p.getParent()) {
      if (p instanceof ScrollPane) {
        top = Math.max(top, seen(p).getMinY());
        foot = Math.min(foot, seen(p).getMaxY());
      }
    }
    return new BoundingBox(
        b.getMinX() + 1, top, Math.max(0, b.getWidth() - 2), foot < top ? -1 : foot - top);
  }

  private static Bounds seen(Node n) {
    return n.localToScene(n.getLayoutBounds());
  }

  /** Words that stick out of what they stand in, but for what can be scrolled to. */
  private void outside(List<String> found) {
    List<Region> all = new ArrayList<>(labels);
    all.addAll(fields);
    all.addAll(choices);
    for (Region n : all) {
      Bounds words = seen(n);
      boolean isScrolled = isScrolled(n);
      for (Node p = n.getParent(); p != null; p = p.equals(root) ? null : p.getParent()) {
        if (p instanceof Region && sticksOut(words, seen(p), isScrolled)) {
          found.add("sticks out of " + p.getStyleClass() + ": " + said(n));
          break;
        }
      }
    }
  }

  private static boolean isScrolled(@Nullable Node n) {
    return n != null
        && (n instanceof ScrollPane || n instanceof ListView || isScrolled(n.getParent()));
  }

  private static boolean sticksOut(Bounds words, Bounds within, boolean isScrolled) {
    return words.getMinX() < within.getMinX() - SLACK
        || words.getMaxX() > within.getMaxX() + SLACK
        || (!isScrolled
            && (words.getMinY() < within.getMinY() - SLACK
                || words.getMaxY() > within.getMaxY() + SLACK));
  }

  private static String said(Region n) {
    return n instanceof Labeled l ? l.getText() : n instanceof TextField f ? f.getText() : "choice";
  }
}
