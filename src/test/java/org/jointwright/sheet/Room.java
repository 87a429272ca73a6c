package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.place.Quad;

/** What is wrong with the room that the texts of a page have. */
public final class Room {
  private final Page page;
  private final List<Placed> texts = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();

  private Room(Page page) {
    this.page = page;
  }

  static Room of(Page page) {
    Room room = new Room(page);
    texts(page.marks(), "", room.texts);
    strokes(page.marks(), "", room.strokes);
    return room;
  }

  /** A text, the group it stands in, and the room it takes without any air round it. */
  private record Placed(Mark.Words words, String group, Quad room) {}

  private record Stroke(Mark.Line line, String group) {}

  /** Whatever is wrong with pages; none where all is well. */
  public static List<String> faults(List<Page> pages) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      Room room = of(pages.get(i));
      String at = "page " + (i + 1) + ": ";
      room.touching().forEach(f -> faults.add(at + f));
      room.struck().forEach(f -> faults.add(at + f));
      room.outside().forEach(f -> faults.add(at + f));
      room.small().forEach(f -> faults.add(at + f));
    }
    return faults;
  }

  /** Texts that touch each other. */
  List<String> touching() {
    List<String> touching = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (int k = i + 1; k < texts.size(); k++) {
        if (texts.get(i).room().meets(texts.get(k).room())) {
          touching.add(texts.get(i).words().text() + " / " + texts.get(k).words().text());
        }
      }
    }
    return touching;
  }

  /** Texts that a line runs through. */
  List<String> struck() {
    List<String> struck = new ArrayList<>();
    for (Placed text : texts) {
      boolean tag = text.group().startsWith("number-");
      for (Stroke s : strokes) {
        // The strokes of a broom are a tone, not lines.
        // A number stands in a box on its own line: what is under the box does not show.
        if (!(tag && !s.group().startsWith("number-"))
            && !s.group().equals(text.group())
            && !s.group().equals("broom")
            && runsThrough(s.line(), text.room())) {
          struck.add(text.words().text() + " by " + s.line().role() + " of " + s.group());
        }
      }
    }
    return struck;
  }

  /** Texts beyond the margins. */
  List<String> outside() {
    return texts.stream()
        .filter(
            t -> !t.room().within(9.5, 7, page.paper().width() - 9.5, page.paper().height() - 8))
        .map(t -> t.words().text() + " beyond the margins")
        .toList();
  }

  /** Texts lower than 3 mm, or of another colour than text. */
  List<String> small() {
    return texts.stream()
        .filter(t -> t.words().size() * Typeface.CAPITAL < 2.999 || t.words().role() != Role.TEXT)
        .map(t -> t.words().text() + " too small or too light")
        .toList();
  }

  private static boolean runsThrough(Mark.Line line, Quad room) {
    for (Edge e : line.path().edges()) {
      int parts = e.turn() == 0 ? 1 : 12;
      for (int i = 0; i < parts; i++) {
        Point a = e.at((double) i / parts);
        Point b = e.at((i + 1.0) / parts);
        if (Quad.line(a, b, line.width() / 2).meets(room)) {
          return true;
        }
      }
    }
    return false;
  }

  private static void texts(List<Mark> marks, String group, List<Placed> into) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Words w -> into.add(new Placed(w, group, Quad.of(w, -0.1)));
        case Mark.Group g -> texts(g.marks(), g.name().isEmpty() ? group : g.name(), into);
        case Mark.Line l -> {}
        case Mark.Area a -> {}
      }
    }
  }

  private static void strokes(List<Mark> marks, String group, List<Stroke> into) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Line l -> into.add(new Stroke(l, group));
        case Mark.Group g -> strokes(g.marks(), g.name().isEmpty() ? group : g.name(), into);
        case Mark.Words w -> {}
        case Mark.Area a -> {}
      }
    }
  }
}
