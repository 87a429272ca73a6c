package org.jointwright.takeoff.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.Rounding;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.practice.Cited;
import org.jointwright.takeoff.Amount;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.MixLine;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/** The words of an order. */
public final class OrderWords {
  /** One pound on a square inch in megapascals: NIST SP 811, appendix B.8 (from memory). */
  public static final double MEGAPASCALS = 0.00689475729;

  private static final double NOISE = 1e-9;

  /** Smaller sizes than this are told to the millimetre, as what has them is sold; inches. */
  private static final double SMALL = 2;

  private final Words words;

  private final FinishWords finishes;

  /** The same words for the sizes that figures are worked out from: an eighth of an inch shows. */
  private final Words exact;

  /** An order in these words. */
  public OrderWords(Words words) {
    this.words = words;
    this.finishes = new FinishWords(words);
    this.exact = words.rounded(words.units().finest());
  }

  /** What a group of lines is called. */
  public String group(Item.Group group) {
    return words.say("takeoff.group." + group.name());
  }

  /** What a line is about. */
  public String name(Line line) {
    boolean ofColor = line.item() == Item.COLORED || line.item() == Item.SHAKE_ON;
    return words.say(
        "takeoff.item." + line.item().name(),
        line.of().stream()
            .map(o -> o instanceof Length l ? size(l, line.item()) : o)
            .map(o -> o instanceof Finishing f ? finishes.finished(f) : o)
            .map(o -> o instanceof String s && ofColor ? finishes.color(s) : o)
            .toArray());
  }

  /** A depth to cut is told as the cut sheet tells it; other sizes as what has them is sold. */
  private String size(Length length, Item item) {
    return switch (item) {
      case TOOLED, SAWN, EARLY -> words.printAtLeast(length);
      // A sheet of 5 ft by 10 ft is no round size in metres: it is told no finer than it is cut.
      case MESH ->
          words.units() == UnitSystem.METRIC
              ? LengthPrinter.print(length, Rounding.CENTIMETRE)
              : words.print(length);
      default -> length.inches() < SMALL ? exact.print(length) : words.print(length);
    };
  }

  /** What the plant is told of colors in the mix; empty where there are none. */
  public String colors(Takeoff takeoff) {
    List<Line> colored = takeoff.of(Item.COLORED);
    if (colored.isEmpty()) {
      return "";
    }
    List<Line> each = new ArrayList<>(colored);
    each.addAll(takeoff.of(Item.PLAIN));
    String all =
        each.size() == 1
            ? color(colored.getFirst())
            : each.stream()
                .map(l -> words.say("takeoff.colors." + l.item().name(), color(l), amount(l)))
                .collect(Collectors.joining(", "));
    return words.say(each.size() == 1 ? "takeoff.color" : "takeoff.colors", all);
  }

  private String color(Line line) {
    return line.of().stream().findFirst().map(o -> finishes.color((String) o)).orElse("");
  }

  /** How much it is; lengths in whole feet or tenths of a metre, for nobody buys less. */
  public String amount(Line line) {
    return switch (line.amount()) {
      case Amount.OfLength(Length length) -> run(length);
      case Amount.Pieces(Integer n) -> words.say("takeoff.pieces", n);
      case Amount a -> words.say("takeoff.amount", a.value());
    };
  }

  /** A run of something in whole feet or tenths of a metre, rounded up. */
  public String run(Length length) {
    return words.units() == UnitSystem.METRIC
        ? words.say("takeoff.metres", Math.ceil(length.in(LengthUnit.METRE) * 10 - NOISE) / 10)
        : words.say("takeoff.feet", (long) Math.ceil(length.feet() - NOISE));
  }

  /** How it was worked out, a sentence for each step. */
  public List<String> how(Line line) {
    return line.how().stream()
        .map(
            s ->
                exact.say(
                    s.key(),
                    s.arguments().stream()
                        .map(a -> a instanceof Length l && isRun(line) ? run(l) : a)
                        .toArray()))
        .toList();
  }

  /** Whether the lengths of a line are runs of something rather than sizes. */
  private static boolean isRun(Line line) {
    return line.amount() instanceof Amount.OfLength;
  }

  /** Where its figures come from; empty where they are all the plan's. */
  public String sources(Line line) {
    return sources(line.sources());
  }

  /** Where figures come from. */
  public String sources(List<Cited> sources) {
    return sources.stream()
        .map(
            c ->
                words.say(
                    "check.source." + c.flag().name().toLowerCase(Locale.ROOT), c.reference()))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  /** The mix in one breath. */
  public String mix(MixLine mix) {
    List<String> parts = new ArrayList<>();
    parts.add(strength(mix.strength()));
    parts.add(
        mix.air().isPresent()
            ? words.say("takeoff.mix.air", mix.air().get(), mix.airTolerance())
            : words.say("takeoff.mix.noAir"));
    parts.add(words.say("takeoff.mix.stone", mix.stone()));
    parts.add(words.say("takeoff.mix.slump", mix.slump()));
    mix.water().ifPresent(w -> parts.add(words.say("takeoff.mix.water", w)));
    parts.add(words.say(mix.fiber() ? "takeoff.mix.fiber" : "takeoff.mix.noFiber"));
    return String.join(", ", parts) + ".";
  }

  /** What the mix is meant for, and whether that asks for more. */
  public String meant(MixLine mix) {
    String exposure = words.say("takeoff.exposure." + mix.exposure().name());
    return mix.isWeak()
        ? words.say("takeoff.mix.weak", exposure, strength(mix.asked()))
        : words.say("takeoff.mix.meant", exposure);
  }

  /** A strength, given in pounds on a square inch. */
  public String strength(int psi) {
    return words.units() == UnitSystem.METRIC
        ? words.say("takeoff.mix.megapascals", Math.round(psi * MEGAPASCALS))
        : words.say("takeoff.mix.psi", psi);
  }
}
