package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/**
 * Holds the desk as it is, and tells the panes when it changes. The only thing in the window that
 * changes; used on the JavaFX thread only.
 */
public final class Board {
  private final List<Consumer<Desk>> watchers = new ArrayList<>();
  private final Words feet = Words.english(UnitSystem.FEET_INCHES);
  private final Words metres = Words.english(UnitSystem.METRIC);
  private final Vocabulary vocabulary = new Vocabulary(feet);
  private Desk desk;
  private boolean isTelling;

  /** A board with a desk on it. */
  public Board(Desk desk) {
    this.desk = desk;
  }

  /** The desk as it is. */
  public Desk desk() {
    return desk;
  }

  /** The reader's words, in the measures of the plan. */
  public Words words() {
    return desk.plan().unit().isMetric() ? metres : feet;
  }

  /** The words that a typed sentence may hold. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** What the bundles say of {@code key}. */
  public String say(String key, Object... arguments) {
    return words().say(key, arguments);
  }

  /** Tells {@code watcher} of the desk as it is now, and each time it changes. */
  public void watch(Consumer<Desk> watcher) {
    watchers.add(watcher);
    watcher.accept(desk);
  }

  /** Changes the desk. A change made while the panes are told is told after it. */
  // A step that changes nothing gives back the very desk; comparing whole plans would be slow.
  @SuppressWarnings("ReferenceEquality")
  public void change(UnaryOperator<Desk> step) {
    Desk next = step.apply(desk);
    if (next == desk) {
      return;
    }
    desk = next;
    if (isTelling) {
      return;
    }
    isTelling = true;
    try {
      Desk told;
      do {
        told = desk;
        for (Consumer<Desk> watcher : List.copyOf(watchers)) {
          watcher.accept(told);
        }
      } while (told != desk);
    } finally {
      isTelling = false;
    }
  }
}
