package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.View;
import org.jointwright.text.Words;

/** What is picked or held, with its tape. */
final class HoldMarks {
  private HoldMarks() {}

  static List<Mark> of(Desk desk, Words words) {
    View view = desk.viewport().view();
    return new ArrayList<>(PickMarks.picked(desk.plan(), desk.picked(), view));
  }
}
