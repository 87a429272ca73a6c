package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.drawing.Mark;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/**
 * What is written on the plan, the findings' flags, scale and north; and the room that it takes, so
 * that what is written above it later finds room beside it.
 */
public final class Writing {
  private final List<Mark> marks = new ArrayList<>();
  private final Places places = new Places();

  private Writing(Known known, Desk desk, FlagMarks planted, List<Mark> held, Words words) {
    if (!known.layout().plan().slabs().isEmpty()) {
      // The stake of a flag may stand behind a number, and the way to a number behind a flag:
      // neither strikes the other's figure through.
      List<Mark.Group> flags = planted.marks(places);
      flags.forEach(f -> marks.add(part(f, "stake-", 0, 1)));
      Spared.take(desk, held, places);
      marks.addAll(Labels.of(known, desk, places, words));
      flags.forEach(f -> marks.add(part(f, "cloth-", 1, f.marks().size())));
    }
    boolean metric = words.units() == UnitSystem.METRIC;
    marks.addAll(ScaleBar.of(desk.viewport(), metric));
    marks.addAll(
        NorthMark.of(desk.viewport().width(), desk.plan().north(), words.say("window.plan.north")));
  }

  private static Mark.Group part(Mark.Group flag, String name, int from, int to) {
    return new Mark.Group(name + flag.name(), "", flag.marks().subList(from, to));
  }

  /**
   * What is written on a plan.
   *
   * @param flags those that stand on it
   * @param held what is picked or held, beside which it is written
   */
  public static Writing of(Known known, Desk desk, FlagMarks flags, List<Mark> held, Words words) {
    return new Writing(known, desk, flags, held, words);
  }

  /** The marks, from below upwards. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** The names of the panels that a finding speaks of, each in its panel or beside it. */
  public List<Mark> panelNames(Desk desk) {
    return PanelNames.of(desk, places);
  }
}
