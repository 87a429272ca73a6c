package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jointwright.app.Answer;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is written on the paper, in both languages and measures, on papers as large as windows leave
 * them: no words on other words, none cut off at the edge.
 */
class WordsOnThePaperTest {
  /** The paper of a window of 1280 by 800, enlarged half as much again and not, and of 1920. */
  private static final List<Point> PAPERS =
      List.of(new Point(744, 760), new Point(471, 493), new Point(1280, 1040));

  private static final Map<String, Answer> ANSWERS = new ConcurrentHashMap<>();

  private static Desk laid(String sample, Measures measures) {
    Answer answer =
        ANSWERS.computeIfAbsent(sample, s -> Answer.asItStands(LaidPlans.plan(s + ".jointwright")));
    Desk desk = Desk.opened(answer.plan(), Path.of(sample)).measuredIn(measures);
    long generation = desk.laying().wish().orElseThrow().generation();
    return desk.answered(new Laid(generation, answer.plan(), answer.layout(), answer.judgement()));
  }

  /** A text and the room it takes. */
  private record Written(String text, Box room) {}

  private static List<Written> written(Desk desk, Words words) {
    Known known = Known.of(desk);
    FlagMarks flags = FlagMarks.of(desk);
    List<Mark> held = HoldMarks.of(desk, known, flags, words);
    List<Mark> marks = new ArrayList<>(Writing.of(known, desk, flags, held, words).marks());
    marks.addAll(LiveMarks.of(desk, held, words, new Vocabulary(words)));
    List<Written> found = new ArrayList<>();
    collect(marks, found);
    return found;
  }

  private static void collect(List<? extends Mark> marks, List<Written> into) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Words w -> into.add(new Written(w.text(), room(w)));
        case Mark.Group g -> collect(g.marks(), into);
        case Mark.Line l -> {}
        // The box of the sentence being typed hides what lies under it.
        case Mark.Area a when a.role() == Role.ON_MUST ->
            into.removeIf(w -> a.rings().getFirst().box().meets(w.room()));
        case Mark.Area a -> {}
      }
    }
  }

  /** The box of level words, from their baseline to the height of a capital. */
  private static Box room(Mark.Words w) {
    double width = Runs.width(w);
    double left =
        switch (w.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    Point at = w.at();
    return Stream.of(
            new Point(left, -w.size() * Typeface.CAPITAL),
            new Point(left + width, -w.size() * Typeface.CAPITAL),
            new Point(left, 0),
            new Point(left + width, 0))
        .map(p -> p.turned(-Math.toRadians(w.angle())).plus(at))
        .map(p -> Box.of(p, p))
        .reduce(Box::with)
        .orElseThrow();
  }

  private static boolean holds(Box outer, Box inner) {
    return outer.holds(new Point(inner.minX(), inner.minY()))
        && outer.holds(new Point(inner.maxX(), inner.maxY()));
  }

  /** Left above stands the step, right below the hint; the scale and north have the other two. */
  private static boolean isOnHeadOrHint(Box room, Point paper) {
    return new Box(0, 0, Math.min(380, paper.x() - 90), 70).meets(room)
        || new Box(190, paper.y() - 56, paper.x(), paper.y()).meets(room);
  }

  private static List<String> wanting(Desk desk, Words words) {
    List<String> wanting = new ArrayList<>();
    for (Point size : PAPERS) {
      Desk sized = desk.resized(size.x(), size.y()).fitted();
      Box paper = new Box(0, 0, size.x(), size.y());
      List<Written> all = written(sized, words);
      for (int i = 0; i < all.size(); i++) {
        Box room = all.get(i).room();
        if (!holds(paper, room)) {
          wanting.add(size + ": off the paper: " + all.get(i).text());
        }
        if (!holds(sized.viewport().written(), room) && isOnHeadOrHint(room, size)) {
          wanting.add(size + ": on what the window writes: " + all.get(i).text());
        }
        for (int k = i + 1; k < all.size(); k++) {
          if (all.get(k).room().grown(-0.5).meets(room.grown(-0.5))) {
            wanting.add(size + ": " + all.get(i).text() + " / " + all.get(k).text());
          }
        }
      }
    }
    return wanting;
  }

  @ParameterizedTest
  @CsvSource({"ENGLISH, FEET_INCHES", "SPANISH, FEET_INCHES", "ENGLISH, METRIC", "SPANISH, METRIC"})
  void everyWordHasItsRoom(Language language, UnitSystem units) {
    Words words = Words.of(language, units);
    Measures measures = units == UnitSystem.METRIC ? Measures.METRIC : Measures.FEET_INCHES;
    List<String> wrong = new ArrayList<>();
    for (String sample : List.of("drive-approach-walk", "truck-yard", "curved-drive")) {
      Desk desk = laid(sample, measures);
      for (Step step : Step.values()) {
        wanting(desk.withStep(step), words).forEach(w -> wrong.add(sample + " at " + step + w));
      }
      for (Slab slab : desk.plan().slabs()) {
        for (Joint j : slab.joints()) {
          Desk picked = desk.picking(new Pick.AtJoint(slab.id(), j.id()));
          wanting(picked, words).forEach(w -> wrong.add(sample + " " + j.id() + w));
        }
        Desk outline = desk.withStep(Step.OUTLINE);
        for (int i = 0; i < slab.outline().ring().edges().size(); i++) {
          Ref ref = Ref.outline(slab.id(), i);
          wanting(outline.picking(new Pick.AtEdge(ref)), words)
              .forEach(w -> wrong.add(sample + " side " + ref + w));
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"ENGLISH, FEET_INCHES", "SPANISH, FEET_INCHES", "ENGLISH, METRIC", "SPANISH, METRIC"})
  void theSentenceAndItsMeaningHaveTheirRoom(Language language, UnitSystem units) {
    Words words = Words.of(language, units);
    Measures measures = units == UnitSystem.METRIC ? Measures.METRIC : Measures.FEET_INCHES;
    Desk blank = Desk.blank().measuredIn(measures);
    assertThat(wanting(blank, words)).isEmpty();
    Vocabulary vocabulary = new Vocabulary(words);
    String left = vocabulary.word(Vocabulary.Meaning.LEFT);
    String up = vocabulary.word(Vocabulary.Meaning.UP);
    String out = vocabulary.word(Vocabulary.Meaning.OUT);
    Desk desk = Drafting.begin(blank);
    for (String typed :
        List.of(
            "24", "12 " + up, "3 " + up + " 2 " + left, "24 " + left + " " + out + " 2", "400 x")) {
      Desk typing = Drafting.type(desk, typed);
      assertThat(wanting(typing, words)).as(typed).isEmpty();
      desk = Drafting.enter(typing, LiveMarks.said(typing, vocabulary), "slab");
    }
  }
}
