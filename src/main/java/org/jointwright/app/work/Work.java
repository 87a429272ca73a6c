package org.jointwright.app.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Vertex;

/**
 * The work in a window, as it is kept safe while it stands in no file of the user's.
 *
 * @param plan the plan as it is
 * @param file the user's file that it belongs to; empty where it never was saved
 * @param halfDrawn what is being drawn
 */
public record Work(Plan plan, Optional<Path> file, Optional<HalfDrawn> halfDrawn) {
  /**
   * A drawing that is not finished.
   *
   * @param what what it becomes, by the window's own name for it
   * @param corners its vertices so far
   * @param typed the sentence typed so far for the next side
   * @param wide how wide a strip it becomes, inches; 0 where it becomes none
   */
  public record HalfDrawn(String what, List<Vertex> corners, String typed, double wide) {
    /** Copies the list. */
    public HalfDrawn {
      corners = List.copyOf(corners);
    }
  }
}
