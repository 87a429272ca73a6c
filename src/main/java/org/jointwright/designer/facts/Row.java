package org.jointwright.designer.facts;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.jointwright.designer.state.Desk;

/** One fact of what is picked. */
public sealed interface Row {
  /** A name for the row that stays the same while the facts change. */
  String id();

  /** What the fact is called. */
  String label();

  /** A fact that cannot be changed here. */
  record Shown(String id, String label, String value) implements Row {}

  /**
   * A fact that can be typed anew.
   *
   * @param change what a text that was typed does; refuses with an {@link
   *     org.jointwright.measure.LengthFormatException} or a {@link BadFigure}
   */
  record Typed(String id, String label, String value, Function<String, UnaryOperator<Desk>> change)
      implements Row {}

  /** A fact that is one of a few. */
  record Choice(
      String id,
      String label,
      List<String> options,
      int chosen,
      IntFunction<UnaryOperator<Desk>> change)
      implements Row {
    /** Copies the list. */
    public Choice {
      options = List.copyOf(options);
    }
  }

  /** A fact that holds or does not. */
  record Tick(String id, String label, boolean isOn, Function<Boolean, UnaryOperator<Desk>> change)
      implements Row {}
}
