package org.jointwright.designer.facts;

import java.util.List;

/**
 * The facts of what is picked.
 *
 * @param title its name
 * @param kind what it is
 * @param rows the facts
 * @param deeds the buttons under them
 * @param why why a joint is there, or what else is to be said, in paragraphs
 */
public record Facts(String title, String kind, List<Row> rows, List<Deed> deeds, List<String> why) {
  /** Copies the lists. */
  public Facts {
    rows = List.copyOf(rows);
    deeds = List.copyOf(deeds);
    why = List.copyOf(why);
  }

  /** What tells these facts from those of something else: whose they are, and which. */
  public List<String> shape() {
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(title, kind, why.toString()),
            java.util.stream.Stream.concat(
                rows.stream().map(r -> r.id() + r.getClass().getSimpleName()),
                deeds.stream().map(d -> d.id() + d.label())))
        .toList();
  }
}
