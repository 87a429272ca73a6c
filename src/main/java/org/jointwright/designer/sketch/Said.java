package org.jointwright.designer.sketch;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;

/** What a typed sentence says. */
public sealed interface Said {
  /** The next edge, so long, that way, straight or bulging. */
  record Side(Length length, Turn turn, Optional<Length> bulge) implements Said {}

  /** Back to the first corner. */
  record Close(Optional<Length> bulge) implements Said {}

  /** Not understood: the message's key and arguments. */
  record Unclear(String key, List<Object> arguments) implements Said {
    /** Copies the list. */
    public Unclear {
      arguments = List.copyOf(arguments);
    }
  }

  /**
   * Its last word could become one that is known. It shows what was said before that word, but is
   * not to be placed: no word is left out of what a hand typed.
   *
   * @param soFar what stands before the word
   */
  record Unfinished(Said soFar) implements Said {}

  /** Nothing was typed. */
  record Silent() implements Said {}

  /** Which way an edge leaves the one before. */
  sealed interface Turn {
    /** Not said: the way the pencil points. */
    record Unsaid() implements Turn {}

    /** Turned by so many degrees, counter-clockwise positive: 90 is square to the left. */
    record By(double degrees) implements Turn {}

    /** A way on the paper, degrees counter-clockwise from the right. */
    record OnPaper(double degrees) implements Turn {}

    /**
     * So far over while it goes so far up: a slanted side as it is taped, such as a flare.
     *
     * @param over to the right on the paper; below zero to the left
     * @param up up the paper; below zero down
     */
    record Slanted(Length over, Length up) implements Turn {}
  }
}
