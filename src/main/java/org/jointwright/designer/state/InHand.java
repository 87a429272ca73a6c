package org.jointwright.designer.state;

import java.util.Optional;
import org.jointwright.designer.sketch.Draft;

/**
 * What the hand is doing.
 *
 * @param draft the outline being drawn
 * @param hold what is being dragged
 */
public record InHand(Optional<Draft> draft, Optional<Hold> hold) {
  /** Nothing. */
  public static final InHand EMPTY = new InHand(Optional.empty(), Optional.empty());

  /** Drawing. */
  public static InHand drawing(Draft draft) {
    return new InHand(Optional.of(draft), Optional.empty());
  }

  /** Whether something of the plan moves under the hand. */
  public boolean isMoving() {
    return hold.filter(h -> !(h instanceof Hold.Waiting || h instanceof Hold.HeldArea)).isPresent();
  }

  /** What is held, if it is of that kind. */
  public <T extends Hold> Optional<T> held(Class<T> kind) {
    return hold.filter(kind::isInstance).map(kind::cast);
  }

  /** What waits to be set down. */
  public Optional<Hold.Waiting> waiting() {
    return held(Hold.Waiting.class);
  }

  /** The fixed object or opening that waits to be set down. */
  public Optional<Hold.HeldAddition> addition() {
    return held(Hold.HeldAddition.class);
  }

  /** The ready shape that waits to be set down. */
  public Optional<Hold.HeldShape> shape() {
    return held(Hold.HeldShape.class);
  }

  /** Dragging. */
  public static InHand holding(Hold hold) {
    return new InHand(Optional.empty(), Optional.of(hold));
  }
}
