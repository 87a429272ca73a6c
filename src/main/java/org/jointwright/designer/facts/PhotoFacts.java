package org.jointwright.designer.facts;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Length;
import org.jointwright.plan.Photo;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.text.Words;

/** The facts of the photo beneath: how wide it is on the ground, how it lies, its scale. */
record PhotoFacts(Desk desk, Photo photo, Words words) {
  /** Two places nearer than this on the ground are one for a measure, inches. */
  private static final double APART = 1;

  Facts facts() {
    List<Row> rows =
        List.of(
            new Row.Typed(
                "photo-width",
                words.say("window.photo.width"),
                words.print(Length.inches(photo.width())),
                t -> d -> changed(d, now(d).withWidth(Figures.side(t, d).inches()))),
            new Row.Typed(
                "photo-turn",
                words.say("window.photo.turn"),
                words.say("window.photo.degrees", photo.turn()),
                t -> d -> changed(d, now(d).withTurn(number(t, "°", -360, 360)))),
            new Row.Typed(
                "photo-opacity",
                words.say("window.photo.opacity"),
                words.say("window.photo.percent", photo.opacity() * 100),
                t -> d -> changed(d, now(d).withOpacity(number(t, "%", 0, 100) / 100))));
    List<Deed> deeds =
        List.of(
            Deed.of(
                "photo-scale",
                words.say("window.deed.photoScale"),
                d -> d.picking(Pick.Scaling.BEGUN)),
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d -> d.editedOnly(new PhotoEdit(Optional.empty())).picking(Pick.NOTHING)));
    String title = photo.name().isBlank() ? words.say("window.photo.title") : photo.name();
    return Facts.saying(
        title, words.say("window.kind.photo"), rows, deeds, List.of(words.say("window.photo.why")));
  }

  /** The facts while the scale is set. */
  Facts scaling(Pick.Scaling scaling) {
    String key =
        scaling.from().isEmpty()
            ? "window.photo.first"
            : scaling.to().isEmpty() ? "window.photo.other" : "window.photo.type";
    return Facts.saying(
        words.say("window.photo.scale"),
        words.say("window.kind.photo"),
        apart(scaling).map(a -> distance(scaling, a)).stream().toList(),
        List.of(
            Deed.of(
                "photo-scaled",
                words.say("window.deed.photoBack"),
                d -> d.picking(new Pick.AtPhoto()))),
        List.of(words.say(key)));
  }

  private static Optional<Double> apart(Pick.Scaling s) {
    return s.from().flatMap(a -> s.to().map(a::distance)).filter(d -> d > 0);
  }

  private Row distance(Pick.Scaling s, double apart) {
    return new Row.Typed(
        "photo-distance",
        words.say("window.photo.distance"),
        words.print(Length.inches(apart)),
        t -> d -> scaled(d, s, Figures.side(t, d).inches()));
  }

  /** Scaled, and put down: what comes next is drawing over it. */
  private static Desk scaled(Desk d, Pick.Scaling s, double inches) {
    if (!d.picked().equals(s)) {
      // A box that is left says once more what Enter has done already.
      return d;
    }
    if (apart(s).orElse(0.0) < APART * d.viewport().inches(1)) {
      throw new BadFigure("window.figure.photoOnePlace");
    }
    Photo to = now(d).scaled(s.from().orElseThrow(), s.to().orElseThrow(), inches);
    return changed(d, to).picking(Pick.NOTHING).fitted();
  }

  private static Photo now(Desk d) {
    return d.plan().photo().orElseThrow();
  }

  private static Desk changed(Desk d, Photo to) {
    if (to.width() < Photo.NARROWEST || to.width() > org.jointwright.plan.Sizes.LONGEST) {
      throw new BadFigure(
          "window.figure.photoWidth",
          Length.inches(Photo.NARROWEST),
          Length.inches(org.jointwright.plan.Sizes.LONGEST));
    }
    return d.editedOnly(PhotoEdit.of(to));
  }

  private static double number(String text, String sign, double least, double most) {
    String bare = text.strip();
    try {
      double value =
          Double.parseDouble(
              bare.endsWith(sign) ? bare.substring(0, bare.length() - 1).strip() : bare);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Said below.
    }
    throw new BadFigure("window.figure.between", least, most);
  }
}
