package org.jointwright.designer.pane;

import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;

/** What F1 explains: what is at hand just now, in few words. */
final class HelpHere {
  private HelpHere() {}

  static Notice of(Desk desk, Board board) {
    return explained(key(desk), board);
  }

  /** What {@code key} explains, a paragraph for each of its lines. */
  static Notice explained(String key, Board board) {
    return Notice.word(key, board.say(key + ".lines").lines().toList());
  }

  private static String key(Desk desk) {
    if (desk.draft().isPresent()) {
      return desk.draft().filter(d -> d.what().isLine() && d.what() != Drawn.STRIP).isPresent()
          ? "window.notice.helpLine"
          : "window.notice.helpDraw";
    }
    if (desk.hand().shape().isPresent()) {
      return "window.notice.helpShape";
    }
    if (desk.hand().addition().isPresent()) {
      return "window.notice.helpAddition";
    }
    return switch (desk.sight().step()) {
      case OUTLINE ->
          desk.plan().slabs().isEmpty() ? "window.notice.helpDraw" : "window.notice.helpOutline";
      case SECTION -> "window.notice.helpSection";
      case JOINTS ->
          desk.sight().finding().isPresent()
              ? "window.notice.helpFindings"
              : "window.notice.helpJoints";
      case ORDER -> "window.notice.helpOrder";
      case SHEETS -> "window.notice.helpSheets";
    };
  }
}
