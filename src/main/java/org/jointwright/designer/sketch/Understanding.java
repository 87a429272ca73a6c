package org.jointwright.designer.sketch;

import java.util.Locale;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.text.Words;

/**
 * Says how a typed sentence was understood. Corners have no letters yet: they are lettered round
 * the closed outline, whichever way it was drawn, and a letter that changes would mislead.
 *
 * @param draft what is being drawn
 * @param words the reader's words
 */
public record Understanding(Draft draft, Words words) {
  /**
   * Who walks down the paper steeper than 30 degrees has its right on the left: the sine of that.
   */
  private static final double DOWN = 0.5;

  /** What {@code said} is taken to mean. */
  public String of(Said said) {
    return switch (said) {
      case Said.Silent silent -> words.say("window.understood.nothing");
      case Said.Unclear unclear -> words.say(unclear.key(), unclear.arguments().toArray());
      case Said.Unfinished unfinished -> of(unfinished.soFar());
      case Said.Close close -> close(close);
      case Said.Side side -> side(side);
    };
  }

  private String close(Said.Close close) {
    Optional<Stroke> stroke = Strokes.of(draft, close);
    if (stroke.isEmpty()) {
      return words.say("window.understood.tooFew");
    }
    Length length = Length.inches(stroke.get().edge().length());
    return words.say("window.understood.close", length);
  }

  private String side(Said.Side side) {
    if (Strokes.runsBack(draft, side)) {
      return words.say("window.understood.back", side.length());
    }
    String what =
        switch (side.turn()) {
          case Said.Turn.Unsaid unsaid -> unsaid(side.length());
          case Said.Turn.OnPaper paper -> onPaper(side.length(), paper.degrees());
          case Said.Turn.By by -> turned(side.length(), by.degrees());
          case Said.Turn.Slanted slanted -> slanted(side.length(), slanted);
        };
    return side.bulge().map(b -> bulging(what, b)).orElse(what);
  }

  private String onPaper(Length length, double degrees) {
    if (degrees == 90) {
      return words.say("window.understood.up", length);
    }
    if (degrees == -90) {
      return words.say("window.understood.down", length);
    }
    return words.say(
        degrees == 0 ? "window.understood.toTheRight" : "window.understood.toTheLeft", length);
  }

  private String slanted(Length length, Said.Turn.Slanted slanted) {
    boolean isRight = slanted.over().inches() > 0;
    boolean isUp = slanted.up().inches() > 0;
    return words.say(
        "window.understood.slanted",
        size(slanted.over()),
        words.say(isRight ? "window.tape.rightwards" : "window.tape.leftwards"),
        size(slanted.up()),
        words.say(isUp ? "window.tape.up" : "window.tape.down"),
        length);
  }

  private static Length size(Length signed) {
    return Length.inches(Math.abs(signed.inches()));
  }

  private String bulging(String what, Length bulge) {
    Length size = size(bulge);
    return bulge.inches() < 0
        ? words.say("window.understood.in", what, size)
        : words.say("window.understood.out", what, size);
  }

  private String unsaid(Length length) {
    if (draft.last().isPresent() && draft.pencil().isPresent()) {
      return words.say("window.understood.pencil", length);
    }
    return draft.heading().isPresent()
        ? words.say("window.understood.square", length)
        : words.say("window.understood.toTheRight", length);
  }

  private String turned(Length length, double degrees) {
    boolean isFirst = draft.heading().isEmpty();
    if (degrees == 0 && isFirst) {
      return words.say("window.understood.toTheRight", length);
    }
    if (degrees == 0) {
      return words.say("window.understood.on", length);
    }
    if (Math.abs(degrees) == 90 && !isFirst) {
      return words.say("window.understood.square", length);
    }
    String figure = String.format(Locale.ROOT, "%.1f", Math.abs(degrees)).replace(".0", "");
    if (isFirst) {
      return words.say(
          degrees > 0 ? "window.understood.risesBy" : "window.understood.fallsBy", length, figure);
    }
    if (draft.heading().orElseThrow().y() < -DOWN) {
      return degrees > 0
          ? words.say("window.understood.leftIsRight", length, figure)
          : words.say("window.understood.rightIsLeft", length, figure);
    }
    return degrees > 0
        ? words.say("window.understood.turnedLeft", length, figure)
        : words.say("window.understood.turnedRight", length, figure);
  }
}
