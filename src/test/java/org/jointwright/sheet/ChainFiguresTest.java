package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Tape;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures of a chain run from the corner where its tape hooks, each rounded by itself, so that
 * no rounding is carried on: what lies between two of them is the difference of what is printed,
 * and all pieces add up to the printed length of the side.
 */
class ChainFiguresTest {
  static List<String> plans() {
    return LaidPlans.names();
  }

  private static Facts facts(String name, UnitSystem units) {
    SheetOptions options = new SheetOptions("", Words.english(units), Paper.LETTER);
    return Facts.of(Layouts.of(LaidPlans.plan(name)), options);
  }

  private static double read(String printed) {
    return LengthReader.read(printed, LengthUnit.INCH).inches();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void piecesAddUpToTheirSide(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      Facts facts = facts(name, units);
      double half = units.rounding().step().inches() / 2;
      for (Chains.Chain chain : facts.chains()) {
        double before = 0;
        double sum = 0;
        for (Chains.Stop stop : chain.stops()) {
          double printed = read(facts.print(stop.along()));
          assertThat(printed).as(chain.tape().name()).isCloseTo(stop.along(), within(half + 1e-6));
          assertThat(printed).as(chain.tape().name()).isGreaterThanOrEqualTo(before);
          sum += printed - before;
          before = printed;
        }
        assertThat(sum)
            .as("%s of %s", chain.tape().name(), name)
            .isCloseTo(read(facts.print(chain.tape().length())), within(1e-9));
      }
    }
  }

  /** The same mark is printed the same in its row as on the plan. */
  @ParameterizedTest
  @MethodSource("plans")
  void aMarkHasOneFigure(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      Facts facts = facts(name, units);
      List<String> other = new ArrayList<>();
      for (Finder.Run run : facts.runs().values()) {
        for (Whereabouts end : List.of(run.from(), run.to())) {
          if (end instanceof Whereabouts.OnTape on && !isPrinted(on, facts)) {
            other.add(run.item().number() + " at " + facts.print(on.along()) + on.tape().name());
          }
        }
      }
      assertThat(other).as("%s, %s", name, units).isEmpty();
    }
  }

  private static boolean isPrinted(Whereabouts.OnTape on, Facts facts) {
    Tape tape = on.tape();
    return facts.chains().stream()
        .filter(c -> c.tape().equals(tape))
        .flatMap(c -> c.stops().stream())
        .anyMatch(s -> facts.print(s.along()).equals(facts.print(on.along())));
  }
}
