package org.jointwright.sheet.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.Rounding;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.LaidPlans;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Outline, joints, filler and box-outs are rebuilt from the text of the PDF alone and compared with
 * the plan to 1/8 in, or 5 mm where the sheet is metric.
 */
class ReadBackTest {
  static List<String> plans() {
    return LaidPlans.names();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void printedWordsRebuildThePlan(String name) {
    Plan plan = LaidPlans.plan(name);
    assertThat(Comparison.differences(plan, PdfText.of(LaidPlans.pdf(name)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "multi_drive_approach_walk",
        "fixed_drain_24x20_5in",
        "approach_arc_returns_20_r6_6in",
        "units_mm_6000x9500"
      })
  void anyFigureChangedByAnInchIsNoticed(String name) {
    Plan plan = LaidPlans.plan(name);
    List<Printed> lines = PdfText.of(LaidPlans.pdf(name));
    List<String> unnoticed = new ArrayList<>();
    int changed = 0;
    for (int i = 0; i < lines.size(); i++) {
      String text = lines.get(i).text();
      Matcher m = Pattern.compile(Grammar.LENGTH).matcher(text);
      while (m.find()) {
        String other = text.substring(0, m.start()) + longer(m.group()) + text.substring(m.end());
        List<Printed> mutant = new ArrayList<>(lines);
        mutant.set(i, lines.get(i).withText(other));
        changed++;
        if (Comparison.differences(plan, mutant).isEmpty()) {
          unnoticed.add(text + " as " + other);
        }
      }
    }
    assertThat(changed).isGreaterThan(20);
    assertThat(unnoticed).isEmpty();
  }

  /** The length with an inch, or 25 mm, more. */
  private static String longer(String length) {
    boolean metric = length.endsWith("m");
    double inches = Grammar.length(length) + (metric ? 25 / 25.4 : 1);
    Rounding step = metric ? Rounding.MILLIMETRE : Rounding.SIXTEENTH_INCH;
    return LengthPrinter.print(Length.inches(inches), step);
  }
}
