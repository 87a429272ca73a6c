package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.jointwright.text.Language;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of a sheet touches another or is struck through, and all stay on the paper. */
class RoomTest {
  /** More joints than this make a sheet that takes seconds; it is looked at in English only. */
  private static final int MANY = 60;

  /** The rows of numbers beside its curve are too close for metric figures yet. */
  private static final String CLOSE = "curved-drive.jointwright";

  /**
   * Every plan, in Spanish too where it is not large; samples in Spanish and the other measures.
   */
  static List<Sheets> sheets() {
    List<Sheets> all = new ArrayList<>();
    for (String name : LaidPlans.names()) {
      Plan plan = LaidPlans.plan(name);
      UnitSystem own = UnitSystem.of(plan.unit());
      all.add(new Sheets(name, Language.ENGLISH, own, true));
      all.add(new Sheets(name, Language.ENGLISH, own, false));
      if (plan.slabs().stream().mapToInt(s -> s.joints().size()).sum() <= MANY) {
        all.add(new Sheets(name, Language.SPANISH, own, true));
      }
    }
    for (String name : LaidPlans.samples()) {
      all.add(new Sheets(name, Language.SPANISH, UnitSystem.METRIC, false));
      all.add(new Sheets(name, Language.SPANISH, UnitSystem.FEET_INCHES, false));
      if (!name.equals(CLOSE)) {
        all.add(new Sheets(name, Language.SPANISH, UnitSystem.METRIC, true));
      }
    }
    return all.stream().distinct().toList();
  }

  /** The cut sheet of a plan in a language and measures, or its order sheet. */
  record Sheets(String name, Language language, UnitSystem units, boolean cut) {
    List<Page> pages() {
      return cut ? LaidPlans.pages(name, language, units) : LaidPlans.orders(name, language, units);
    }
  }

  /** A text, the group it stands in, and the room it takes without any air round it. */
  private record Placed(Mark.Words words, String group, Quad room) {}

  private record Stroke(Mark.Line line, String group) {}

  @ParameterizedTest
  @MethodSource("sheets")
  void noTextTouchesAnother(Sheets sheets) {
    assertThat(touching(sheets)).isEmpty();
  }

  static List<String> touching(Sheets sheets) {
    List<String> touching = new ArrayList<>();
    for (Page page : sheets.pages()) {
      List<Placed> texts = new ArrayList<>();
      texts(page.marks(), "", texts);
      for (int i = 0; i < texts.size(); i++) {
        for (int k = i + 1; k < texts.size(); k++) {
          if (texts.get(i).room().meets(texts.get(k).room())) {
            touching.add(texts.get(i).words().text() + " / " + texts.get(k).words().text());
          }
        }
      }
    }
    return touching;
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void noLineRunsThroughAText(Sheets sheets) {
    assertThat(struck(sheets)).isEmpty();
  }

  static List<String> struck(Sheets sheets) {
    List<String> struck = new ArrayList<>();
    for (Page page : sheets.pages()) {
      List<Placed> texts = new ArrayList<>();
      texts(page.marks(), "", texts);
      List<Stroke> strokes = new ArrayList<>();
      strokes(page.marks(), "", strokes);
      for (Placed text : texts) {
        boolean tag = text.group().startsWith("number-");
        for (Stroke s : strokes) {
          // A number stands in a box on its own line: what is under the box does not show.
          if (!(tag && !s.group().startsWith("number-"))
              && !s.group().equals(text.group())
              && runsThrough(s.line(), text.room())) {
            struck.add(text.words().text() + " by " + s.line().role() + " of " + s.group());
          }
        }
      }
    }
    return struck;
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

  @ParameterizedTest
  @MethodSource("sheets")
  void everyTextStaysInsideTheMargins(Sheets sheets) {
    for (Page page : sheets.pages()) {
      List<Placed> texts = new ArrayList<>();
      texts(page.marks(), "", texts);
      for (Placed t : texts) {
        assertThat(t.room().within(9.5, 7, page.paper().width() - 9.5, page.paper().height() - 8))
            .as(t.words().text())
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void noLetteringIsSmallerThanThreeMillimetres(Sheets sheets) {
    for (Page page : sheets.pages()) {
      List<Placed> texts = new ArrayList<>();
      texts(page.marks(), "", texts);
      assertThat(texts)
          .allMatch(t -> t.words().size() * Typeface.CAPITAL >= 2.999)
          .allMatch(t -> t.words().role() == Role.TEXT);
    }
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
