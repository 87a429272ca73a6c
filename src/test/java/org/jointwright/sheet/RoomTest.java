package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.place.Quad;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of a sheet touches another or is struck through, and all stay on the paper. */
class RoomTest {
  /** More joints than this make a sheet that takes seconds: such plans are left to the whole. */
  private static final int MANY = 60;

  private static final int SELECTED = 70;
  private static final long SEED = 20_261_127;

  /** What is looked at by all: sheets of which kind, of which plan, for whom, on what paper. */
  record Sheets(String name, Kind kind, Language language, UnitSystem units, Paper paper) {
    List<Page> pages() {
      return LaidPlans.pages(name, kind, Words.of(language, units), paper);
    }

    @Override
    public String toString() {
      return String.join(" ", name, kind.name(), language.code(), units.name(), paper.name());
    }
  }

  /**
   * Samples on letter paper in English feet and on A4 in Spanish metres, and of everything else a
   * selection that is the same each time. {@code -Drooms=all} looks at all, {@code -Drooms=TEXT} at
   * those whose name holds the text.
   */
  static List<Sheets> sheets() {
    String asked = System.getProperty("rooms", "");
    if (!asked.isEmpty()) {
      return whole(LaidPlans.names()).stream()
          .filter(s -> asked.equals("all") || s.toString().contains(asked))
          .toList();
    }
    List<Sheets> all = new ArrayList<>();
    for (String name : LaidPlans.samples()) {
      for (Kind kind : Kind.values()) {
        all.add(new Sheets(name, kind, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER));
        all.add(new Sheets(name, kind, Language.SPANISH, UnitSystem.METRIC, Paper.A4));
      }
    }
    List<Sheets> others =
        new ArrayList<>(whole(LaidPlans.names().stream().filter(RoomTest::isSmall).toList()));
    Collections.shuffle(others, new Random(SEED));
    all.addAll(others.subList(0, SELECTED));
    return all.stream().distinct().toList();
  }

  private static boolean isSmall(String name) {
    return LaidPlans.plan(name).slabs().stream().mapToInt(s -> s.joints().size()).sum() <= MANY;
  }

  /** Every sheet in both languages and measures on the usual papers, and once on the others. */
  private static List<Sheets> whole(List<String> names) {
    List<Sheets> all = new ArrayList<>();
    for (String name : names) {
      for (Kind kind : Kind.values()) {
        for (UnitSystem units : UnitSystem.values()) {
          for (Language language : Language.values()) {
            all.add(new Sheets(name, kind, language, units, Paper.LETTER));
            all.add(new Sheets(name, kind, language, units, Paper.A4));
          }
        }
        UnitSystem own = UnitSystem.of(LaidPlans.plan(name).unit());
        for (Paper paper : List.of(Paper.TABLOID, Paper.ARCH_C, Paper.A3, Paper.A2)) {
          all.add(new Sheets(name, kind, Language.ENGLISH, own, paper));
        }
      }
    }
    return all;
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
