package org.jointwright.designer.facts;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeReader;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.Pour;
import org.jointwright.plan.edit.PourEdit;
import org.jointwright.text.Words;

/** How much is poured at a time, to be typed; an empty box is no limit. */
record PourRows(Desk desk, Words words) {
  List<Row> rows() {
    Pour pour = desk.plan().pour();
    return List.of(
        new Row.Typed(
            "pour-most",
            words.say("window.pour.most"),
            pour.most().map(words::print).orElse(none()),
            t -> d -> set(d, most(t, d), d.plan().pour().strip())),
        new Row.Typed(
            "pour-strip",
            words.say("window.pour.strip"),
            pour.strip().map(words::print).orElse(none()),
            t -> d -> set(d, d.plan().pour().most(), strip(t, d))));
  }

  private String none() {
    return words.say("window.pour.none");
  }

  private boolean isNone(String text) {
    return text.isBlank() || text.strip().equals(none());
  }

  private static Desk set(Desk d, Optional<Volume> most, Optional<Length> strip) {
    return d.edited(new PourEdit(new Pour(most, strip, d.plan().pour().kept())));
  }

  private Optional<Volume> most(String text, Desk d) {
    if (isNone(text)) {
      return Optional.empty();
    }
    VolumeUnit bare = VolumeUnit.of(d.measures());
    Volume read =
        VolumeReader.read(text, bare).orElseThrow(() -> new BadFigure("window.figure.noVolume"));
    if (read.compareTo(Pour.LEAST) < 0 || read.compareTo(Pour.MOST) > 0) {
      throw new BadFigure("window.figure.pour", Pour.LEAST, Pour.MOST);
    }
    return Optional.of(read);
  }

  private Optional<Length> strip(String text, Desk d) {
    if (isNone(text)) {
      return Optional.empty();
    }
    Length read = Figures.site(text, d);
    if (read.inches() < Pour.NARROWEST.inches() || read.inches() > Pour.WIDEST.inches()) {
      throw new BadFigure("window.figure.strip", Pour.NARROWEST, Pour.WIDEST);
    }
    return Optional.of(read);
  }
}
