package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Mix.Exposure;
import org.jointwright.plan.edit.MixEdit;
import org.jointwright.takeoff.MixLine;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;

/** The concrete that is ordered, to be typed; what is left empty is as usual. */
record MixRows(Desk desk, Words words) {
  private static final Pattern STRENGTH = Pattern.compile("(\\d[\\d,]*(?:\\.\\d+)?)\\s*(psi|mpa)?");

  /** The stiffest and the wettest that a slump is read for, inches: as in plan files. */
  private static final double STIFFEST = 0.5;

  private static final double WETTEST = 10;

  List<Row> rows() {
    Mix mix = desk.plan().mix();
    MixLine line = MixLine.of(mix);
    OrderWords said = new OrderWords(words);
    List<Exposure> all = Arrays.asList(Exposure.values());
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row.Choice(
            "mix-exposure",
            words.say("window.mix.exposure"),
            all.stream().map(e -> words.say("window.mix.exposure." + e.name())).toList(),
            all.indexOf(mix.exposure()),
            i -> set(m -> with(m, all.get(i), m.stone(), m.strength(), m.slump(), m.fiber()))));
    rows.add(
        new Row.Typed(
            "mix-strength",
            words.say("window.mix.strength"),
            said.strength(line.strength()),
            t -> {
              Optional<Integer> psi = strength(t);
              return set(m -> with(m, m.exposure(), m.stone(), psi, m.slump(), m.fiber()));
            }));
    rows.add(
        new Row.Choice(
            "mix-stone",
            words.say("window.mix.stone"),
            Mix.STONES.stream().map(words::print).toList(),
            Mix.STONES.indexOf(mix.stone()),
            i ->
                set(
                    m ->
                        with(
                            m,
                            m.exposure(),
                            Mix.STONES.get(i),
                            m.strength(),
                            m.slump(),
                            m.fiber()))));
    rows.add(
        new Row.Typed(
            "mix-slump",
            words.say("window.mix.slump"),
            words.print(line.slump()),
            t ->
                d -> {
                  Optional<Length> slump = slump(t, d);
                  return set(m -> with(m, m.exposure(), m.stone(), m.strength(), slump, m.fiber()))
                      .apply(d);
                }));
    rows.add(
        new Row.Tick(
            "mix-fiber",
            words.say("window.mix.fiber"),
            mix.fiber(),
            on -> set(m -> with(m, m.exposure(), m.stone(), m.strength(), m.slump(), on))));
    return rows;
  }

  private static UnaryOperator<Desk> set(UnaryOperator<Mix> change) {
    return d -> d.editedOnly(new MixEdit(change.apply(d.plan().mix())));
  }

  private static Mix with(
      Mix mix,
      Exposure exposure,
      Length stone,
      Optional<Integer> strength,
      Optional<Length> slump,
      boolean fiber) {
    return new Mix(exposure, stone, strength, slump, fiber, mix.kept());
  }

  /** Pounds on a square inch; empty for what the weather asks. */
  private Optional<Integer> strength(String text) {
    if (text.isBlank()) {
      return Optional.empty();
    }
    Matcher m = STRENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw new BadFigure("window.figure.strength", bounds(Mix.WEAKEST), bounds(Mix.STRONGEST));
    }
    double read = Double.parseDouble(m.group(1).replace(",", ""));
    boolean isMetric =
        m.group(2) == null ? words.units() == UnitSystem.METRIC : m.group(2).equals("mpa");
    double psi = isMetric ? read / OrderWords.MEGAPASCALS : read;
    if (psi < Mix.WEAKEST || psi > Mix.STRONGEST) {
      throw new BadFigure("window.figure.strength", bounds(Mix.WEAKEST), bounds(Mix.STRONGEST));
    }
    return Optional.of((int) Math.round(psi));
  }

  private String bounds(int psi) {
    return new OrderWords(words).strength(psi);
  }

  private static Optional<Length> slump(String text, Desk desk) {
    if (text.isBlank()) {
      return Optional.empty();
    }
    Length read = Figures.small(text, desk);
    if (read.inches() < STIFFEST || read.inches() > WETTEST) {
      throw new BadFigure("window.figure.slump", Length.inches(STIFFEST), Length.inches(WETTEST));
    }
    return Optional.of(read);
  }
}
