package org.jointwright.layout.keep;

import java.util.Optional;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Edge;

/**
 * A joint of the layout before.
 *
 * @param number counted from 0
 * @param joint the joint as it was
 * @param held where the user holds it now; empty where it is the engine's to move
 * @param start the place it starts at
 * @param end the place it ends at
 */
record Track(int number, Joint joint, Optional<Edge> held, Node start, Node end) {
  /** Its only edge as it was. */
  Edge edge() {
    return joint.path().edges().getFirst();
  }

  Node end(boolean last) {
    return last ? end : start;
  }
}
