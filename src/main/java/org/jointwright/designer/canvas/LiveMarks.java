package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.sketch.Sentence;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.View;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** What is laid above the plan: what is picked, pointed at, held, and drawn. */
public final class LiveMarks {
  private LiveMarks() {}

  /**
   * The marks above the plan.
   *
   * @param held what is picked or held
   */
  public static List<Mark> of(Desk desk, List<Mark> held, Words words, Vocabulary vocabulary) {
    View view = desk.viewport().view();
    List<Mark> marks = new ArrayList<>();
    Optional<Draft> draft = desk.draft();
    if (draft.isPresent()) {
      Said said = said(desk, vocabulary);
      marks.addAll(DraftMarks.of(desk, draft.get(), said, words));
      if (SentenceMarks.isShown(draft.get())) {
        List<Mark> sentence = SentenceMarks.of(desk, draft.get(), said, words);
        marks.removeIf(m -> m instanceof Mark.Words w && lieUnder(sentence, InSight.room(w)));
        marks.addAll(sentence);
      } else if (isBlank(desk)
          && draft.get().placed().isEmpty()
          && draft.get().pencil().isEmpty()) {
        marks.addAll(SentenceMarks.invitation(desk, words));
      }
      return marks;
    }
    if (desk.hand().waiting().isPresent()) {
      return held;
    }
    if (isBlank(desk) && desk.sight().step() == Step.OUTLINE && !isAtPhoto(desk)) {
      return SentenceMarks.invitation(desk, words);
    }
    if (!desk.sight().pointed().equals(desk.picked())) {
      marks.addAll(PickMarks.pointed(desk.plan(), desk.sight().pointed(), view));
    }
    marks.addAll(held);
    marks.addAll(FixMarks.of(desk));
    return marks;
  }

  /** Whether what is written there lies under the box: half a figure would be misread. */
  private static boolean lieUnder(List<Mark> box, Box written) {
    return box.stream()
        .anyMatch(m -> m instanceof Mark.Area a && a.rings().getFirst().box().meets(written));
  }

  /** What the sentence being typed says. */
  public static Said said(Desk desk, Vocabulary vocabulary) {
    return desk.draft()
        .map(d -> Sentence.read(d.typed(), vocabulary, desk.bare()))
        .orElseGet(Said.Silent::new);
  }

  /**
   * The place in the sentence being typed at a place of the paper; empty where none is typed, or
   * its box is elsewhere.
   *
   * @param anywhere whether a hand that has left the box still means its nearest place
   */
  public static OptionalInt inSentence(
      Desk desk, Words words, Vocabulary vocabulary, Point at, boolean anywhere) {
    return desk.draft()
        .filter(SentenceMarks::isShown)
        .map(d -> SentenceMarks.placeAt(desk, d, said(desk, vocabulary), words, at, anywhere))
        .orElse(OptionalInt.empty());
  }

  /** What a screen reader is told while a sentence is typed. */
  public static Optional<String> spoken(Desk desk, Words words, Vocabulary vocabulary) {
    return SentenceMarks.spoken(desk, said(desk, vocabulary), words);
  }

  /** Where the photo is in hand, what to type for a side would only be in the way. */
  private static boolean isAtPhoto(Desk desk) {
    return desk.picked() instanceof Pick.AtPhoto || desk.picked() instanceof Pick.Scaling;
  }

  private static boolean isBlank(Desk desk) {
    return desk.plan().slabs().isEmpty();
  }
}
