package org.jointwright.designer.facts;

import java.util.List;
import java.util.stream.Stream;

/**
 * The facts of what is picked.
 *
 * @param title its name
 * @param kind what it is
 * @param rows the facts
 * @param deeds the buttons under them
 * @param notes why a joint is there, or what else is to be said
 */
public record Facts(String title, String kind, List<Row> rows, List<Deed> deeds, List<Note> notes) {
  /** Something that is said under the facts. */
  public record Note(Kind kind, String text) {}

  /** How a note is set. */
  public enum Kind {
    /** Above the others. */
    TITLE,
    /** A paragraph. */
    BODY,
    /** What the dashed line on the plan is. */
    CRACK,
    /** Small and quiet. */
    QUIET
  }

  /** Copies the lists. */
  public Facts {
    rows = List.copyOf(rows);
    deeds = List.copyOf(deeds);
    notes = List.copyOf(notes);
  }

  /** Facts with plain paragraphs under them. */
  static Facts saying(
      String title, String kind, List<Row> rows, List<Deed> deeds, List<String> said) {
    return new Facts(
        title, kind, rows, deeds, said.stream().map(t -> new Note(Kind.BODY, t)).toList());
  }

  /**
   * Which rows and buttons there are. The title is no part of it: a job that is given another name
   * keeps the very fields a hand may be typing in.
   */
  public List<String> shape() {
    return Stream.concat(
            rows.stream().map(r -> r.id() + r.getClass().getSimpleName()),
            deeds.stream().map(d -> d.id() + d.label()))
        .toList();
  }
}
