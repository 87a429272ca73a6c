package org.jointwright.designer.pane;

import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Step;

/** One quiet line at the plan's lower right, as long as what it says was not yet done. */
final class Hints {
  private Hints() {}

  static String of(Desk desk, Board board) {
    if (desk.notice().isPresent()) {
      return "";
    }
    if (desk.draft().isPresent()) {
      Draft draft = desk.draft().get();
      // A line is not closed: what is to be typed for it stands beside it.
      return draft.placed().isEmpty() || draft.what().isLine() ? "" : board.say("window.hint.draw");
    }
    if (desk.plan().slabs().isEmpty()) {
      return "";
    }
    return desk.sight().step() == Step.JOINTS
        ? board.say("window.hint.joints")
        : desk.sight().step() == Step.OUTLINE ? board.say("window.hint.outline") : "";
  }
}
