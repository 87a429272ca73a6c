package org.jointwright.designer.facts;

import org.jointwright.designer.state.Desk;
import org.jointwright.text.Words;

/** Takes out what is picked, where it can be taken out. */
public final class TakeOut {
  private static final String DEED = "take-out";

  private TakeOut() {}

  /** The desk without what is picked: the deed of its facts, so that both always agree. */
  public static Desk picked(Desk desk, Words words) {
    return FactsOf.desk(desk, words).deeds().stream()
        .filter(d -> d.id().equals(DEED))
        .map(Deed::what)
        .findFirst()
        .map(
            what ->
                switch (what) {
                  case Deed.OnDesk on -> on.change().apply(desk);
                  case Deed.WriteSheets w -> desk;
                  case Deed.ToPhoto p -> desk;
                })
        .orElse(desk);
  }
}
