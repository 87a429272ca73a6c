package org.jointwright.designer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jointwright.designer.settings.Settings;
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
  private final List<Consumer<Desk>> furniture = new ArrayList<>();
  private Settings settings;
  private Words feet;
  private Words metres;
  private Vocabulary vocabulary;
  private Runnable whenSettled = () -> {};
  private Desk desk;
  private boolean isTelling;
  private boolean isFurnishing;

  /** A board with a desk on it, in a window as the user chose it. */
  public Board(Desk desk, Settings settings) {
    this.desk = desk.measuredIn(settings.measures());
    this.settings = settings;
    feet = Words.of(settings.language(), UnitSystem.FEET_INCHES);
    metres = Words.of(settings.language(), UnitSystem.METRIC);
    vocabulary = new Vocabulary(feet);
  }

  /** What the user has chosen of the window. */
  public Settings settings() {
    return settings;
  }

  /** Chooses otherwise. The desk stays as it is, but for the measures it is shown in. */
  public void settle(UnaryOperator<Settings> choice) {
    Settings next = choice.apply(settings);
    if (next.equals(settings)) {
      return;
    }
    boolean isTranslated = next.language() != settings.language();
    settings = next;
    if (isTranslated) {
      feet = Words.of(next.language(), UnitSystem.FEET_INCHES);
      metres = Words.of(next.language(), UnitSystem.METRIC);
      vocabulary = new Vocabulary(feet);
      // What is said already would stay in the other language.
      change(d -> d.untold().notMeasuring());
    }
    change(d -> d.measuredIn(next.measures()));
    whenSettled.run();
  }

  /** Has {@code then} done each time the user has chosen otherwise. */
  public void whenSettled(Runnable then) {
    whenSettled = then;
  }

  /**
   * Makes what stands in the window. What was made so the last time is told no more of the desk:
   * this takes its place.
   */
  public <T> T furnish(Supplier<T> making) {
    watchers.removeAll(furniture);
    furniture.clear();
    isFurnishing = true;
    try {
      return making.get();
    } finally {
      isFurnishing = false;
    }
  }

  /** The desk as it is. */
  public Desk desk() {
    return desk;
  }

  /** The reader's words, in the measures that lengths are shown in. */
  public Words words() {
    return desk.measures() == UnitSystem.METRIC ? metres : feet;
  }

  /** The words that a typed sentence may hold. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** What the bundles say of {@code key}. */
  public String say(String key, Object... arguments) {
    return words().say(key, arguments);
  }

  /**
   * Tells {@code watcher} of the desk as it is now, and each time it changes in more than how the
   * plan lies in the window and what is under the pointer.
   */
  public void watch(Consumer<Desk> watcher) {
    Desk[] last = {desk};
    Consumer<Desk> calm =
        d -> {
          if (!d.isSameButView(last[0])) {
            last[0] = d;
            watcher.accept(d);
          }
        };
    add(calm);
    watcher.accept(desk);
  }

  /** Tells {@code watcher} of the desk as it is now, and each time anything on it changes. */
  public void watchAll(Consumer<Desk> watcher) {
    add(watcher);
    watcher.accept(desk);
  }

  private void add(Consumer<Desk> watcher) {
    watchers.add(watcher);
    if (isFurnishing) {
      furniture.add(watcher);
    }
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
