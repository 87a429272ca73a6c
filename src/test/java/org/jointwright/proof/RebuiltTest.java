package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Where;
import org.jointwright.sheet.LaidPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Outline, joints, filler and box-outs are rebuilt from printed words alone and lie where they lie
 * in the plan, to 1/8 in, or 5 mm where the sheet is metric; ends of joints to a fifth more.
 */
class RebuiltTest {
  private static final double MM_PER_INCH = 25.4;

  static List<Sheets> sheets() {
    return Sheets.some();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void whatIsRebuiltIsThePlan(Sheets sheet) {
    assertThat(Comparison.differences(LaidPlans.plan(sheet.name()), sheet.proof())).isEmpty();
  }

  /** The scale bar's figures stand as far apart as the printed scale says. */
  @ParameterizedTest
  @MethodSource("sheets")
  void theScaleBarMeasuresRight(Sheets sheet) {
    Reading reading = sheet.proof().reading();
    List<Printed> words = sheet.words();
    Printed zero = words.stream().filter(l -> l.text().equals("0")).findFirst().orElseThrow();
    List<Printed> bar =
        words.stream()
            .filter(l -> l.page() == zero.page() && Math.abs(l.y() - zero.y()) < 0.1)
            .filter(l -> l.x() > zero.x() && Math.abs(l.size() - zero.size()) < 0.1)
            .filter(l -> l.text().matches("[0-9].*(′|m|″)"))
            .toList();
    assertThat(bar).hasSize(3);
    for (Printed l : bar) {
      String text = l.text().endsWith("′") ? l.text() + "-0″" : l.text();
      double inches = LengthReader.read(text, LengthUnit.INCH).inches();
      double measured = (l.middleX() - zero.middleX()) * reading.scale() / MM_PER_INCH;
      assertThat(measured / inches).as(l.text()).isBetween(0.99, 1.01);
    }
  }

  /** Where joints end on joints, those marks stand twice, but where that cost a page. */
  @ParameterizedTest
  @MethodSource("sheets")
  void marksOnJointsAreListed(Sheets sheet) {
    Reading reading = sheet.proof().reading();
    boolean isMet =
        reading.rows().stream()
            .anyMatch(r -> r.from() instanceof Where.OnJoint || r.to() instanceof Where.OnJoint);
    boolean isOnePage = sheet.words().stream().allMatch(w -> w.page() == 0);
    assertThat(!isMet || !reading.tees().isEmpty() || isOnePage).isTrue();
  }

  /** Where letters stand says which side of a string is meant, and nothing about how far. */
  @Test
  void lettersMayStandAnywhereNearTheirCorners() {
    long seed = 4;
    Random random = new Random(seed);
    for (Sheets sheet : Sheets.some().subList(0, 12)) {
      List<Printed> moved = new ArrayList<>();
      for (Printed l : sheet.words()) {
        boolean letter = l.isOf("Heavy") && l.text().matches("[A-Z]") && l.capital() > 4.5;
        double by = letter ? 6 : 0;
        moved.add(
            new Printed(
                l.page(),
                l.x() + (random.nextDouble() - 0.5) * by,
                l.y() + (random.nextDouble() - 0.5) * by,
                l.width(),
                l.size(),
                l.angle(),
                l.font(),
                l.text()));
      }
      Proof proof = Proof.of(moved).orElseThrow();
      assertThat(proof.faults()).as("%s, seed %d", sheet.name(), seed).isEmpty();
      assertThat(Comparison.differences(LaidPlans.plan(sheet.name()), proof)).isEmpty();
    }
  }
}
