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

  /** What waits to be set down. */
  public Optional<Hold.Waiting> waiting() {
    return hold.filter(Hold.Waiting.class::isInstance).map(Hold.Waiting.class::cast);
  }

  /** The fixed object or opening that waits to be set down. */
  public Optional<Hold.HeldAddition> addition() {
    return hold.filter(Hold.HeldAddition.class::isInstance).map(Hold.HeldAddition.class::cast);
  }

  /** The ready shape that waits to be set down. */
  public Optional<Hold.HeldShape> shape() {
    return hold.filter(Hold.HeldShape.class::isInstance).map(Hold.HeldShape.class::cast);
  }

  /** Dragging. */
  public static InHand holding(Hold hold) {
    return new InHand(Optional.empty(), Optional.of(hold));
  }
}
