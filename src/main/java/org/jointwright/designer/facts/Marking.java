package org.jointwright.designer.facts;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.text.Words;

/** What the menu does to what is picked, or says what to pick first. */
public final class Marking {
  private Marking() {}

  /** Something people see marked on the side that is picked. */
  public static Desk side(Desk desk) {
    return desk.picked() instanceof Pick.AtEdge side
        ? FeatureFacts.added(desk, side.edge())
        : first(desk, "window.notice.sideFirst");
  }

  /** The tip of the corner that is picked cut off. */
  public static Desk tip(Desk desk, Words words) {
    Optional<Desk> cut =
        FactsOf.desk(desk, words).deeds().stream()
            .filter(d -> d.id().equals("cut-tip"))
            .map(Deed::what)
            .findFirst()
            .map(what -> what instanceof Deed.OnDesk on ? on.change().apply(desk) : desk);
    return cut.orElseGet(() -> first(desk, "window.notice.cornerFirst"));
  }

  /** The limits of a pour in sight, to be typed. */
  public static Desk pour(Desk desk) {
    return desk.plan().slabs().isEmpty()
        ? first(desk, "window.notice.slabFirst")
        : desk.withStep(Step.OUTLINE).picking(Pick.NOTHING);
  }

  private static Desk first(Desk desk, String key) {
    return desk.withStep(Step.OUTLINE).told(Notice.word(key, List.of()));
  }
}
