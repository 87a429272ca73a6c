package org.jointwright.designer.state;

import java.util.Optional;

/**
 * What the user asked about a slab, worked out behind the window.
 *
 * @param generation the wish whose answer it is asked about
 * @param slab the slab's id
 * @param answer empty until it is worked out
 * @param <T> what is answered
 */
public record Enquiry<T>(long generation, String slab, Optional<T> answer) {
  /** The same with its answer. */
  public Enquiry<T> with(T value) {
    return new Enquiry<>(generation, slab, Optional.of(value));
  }

  /** Whether both ask the same. */
  public boolean asksAs(Enquiry<T> other) {
    return generation == other.generation && slab.equals(other.slab);
  }

  /** The same asked about the answer to a later wish. */
  Enquiry<T> about(long later) {
    return new Enquiry<>(later, slab, answer);
  }
}
