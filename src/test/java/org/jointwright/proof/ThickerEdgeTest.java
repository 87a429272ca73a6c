package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.proof.build.Fault;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading.Thicker;
import org.jointwright.proof.read.SheetReader;
import org.jointwright.sheet.CutSheet;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Edges that are thicker than their slab: what the orders say of them is read and compared. */
class ThickerEdgeTest {
  private static final Thickened DEEP =
      Thickened.USUAL.withDepth(Length.inches(12)).withOver(Length.inches(30));

  /** Those of the other two slabs are alike and told together. */
  private static final int SECTIONS = 3;

  static List<Words> words() {
    return Stream.of(Language.values())
        .flatMap(l -> Stream.of(UnitSystem.values()).map(u -> Words.of(l, u)))
        .toList();
  }

  /** Two edges of the first slab as is usual, and one of each slab a foot thick. */
  private static Plan plan() {
    Plan plan = LaidPlans.plan("multi_drive_approach_walk");
    List<Slab> slabs = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      Map<Integer, EdgeSetting> edges = new HashMap<>(slab.edges());
      edges.put(1, slab.edge(1).withThickened(Optional.of(DEEP)));
      if (slabs.isEmpty()) {
        edges.put(2, slab.edge(2).withThickened(Optional.of(Thickened.USUAL)));
        edges.put(3, slab.edge(3).withThickened(Optional.of(Thickened.USUAL)));
      }
      slabs.add(slab.withEdges(edges));
    }
    return plan.withSlabs(slabs);
  }

  private static List<Printed> sheet(Words words) {
    SheetOptions options = new SheetOptions("2026-05-04", words, Paper.LETTER);
    return PageWords.of(CutSheet.of(Layouts.of(plan()), options));
  }

  private static Proof proof(List<Printed> sheet) {
    return Proof.of(sheet).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("words")
  void theyAreReadAndProven(Words words) {
    Proof proof = proof(sheet(words));
    assertThat(proof.faults()).isEmpty();
    List<Thicker> read = proof.reading().orders().thicker();
    assertThat(read).hasSize(SECTIONS);
    Slab first = plan().slabs().getFirst();
    double step = words.units().rounding().step().inches();
    assertThat(read)
        .anySatisfy(
            t -> {
              assertThat(t.sides()).hasSize(2);
              assertThat(t.slab().inches() - first.thickness().inches()).isBetween(-step, step);
              assertThat(t.edge().inches() - 1.25 * first.thickness().inches())
                  .isBetween(-step, step);
            })
        .anySatisfy(t -> assertThat(t.edge().inches() - 12).isBetween(-step, step))
        .anySatisfy(t -> assertThat(t.over().inches() - 30).isBetween(-step, step));
  }

  /** An inch more is noticed but where nothing else hangs on it: how far in the edge reaches. */
  @ParameterizedTest
  @MethodSource("words")
  void anInchMoreIsNoticed(Words words) {
    List<Printed> sheet = sheet(words);
    List<Thicker> was = proof(sheet).reading().orders().thicker();
    int noticed = 0;
    for (Slip slip : Slip.all(sheet)) {
      List<Printed> slipped = slip.in(sheet);
      List<Thicker> is = SheetReader.read(slipped).orElseThrow().orders().thicker();
      for (int i = 0; i < SECTIONS; i++) {
        boolean isOver = !over(was.get(i)).equals(over(is.get(i)));
        boolean isOther = !others(was.get(i)).equals(others(is.get(i)));
        if (isOver || isOther) {
          noticed += isOther ? 1 : 0;
          assertThat(proof(slipped).isProven()).as(slip.text()).isEqualTo(isOver);
        }
      }
    }
    assertThat(noticed).isEqualTo(3 * SECTIONS);
  }

  private static String over(Thicker t) {
    return t.over().text();
  }

  private static List<String> others(Thicker t) {
    return List.of(t.edge().text(), t.slab().text(), t.dig().text());
  }

  @Test
  void aSideThatIsNotThereIsNamed() {
    Words words = Words.english(UnitSystem.FEET_INCHES);
    List<Printed> sheet = new ArrayList<>();
    for (Printed l : sheet(words)) {
      boolean isIt = l.text().contains("Thicker at");
      sheet.add(isIt ? l.withText(l.text().replaceFirst("[A-Z]–[A-Z]", "A–H")) : l);
    }
    Proof proof = proof(sheet);
    assertThat(proof.faults()).extracting(Fault::kind).containsOnly(Fault.Kind.NO_SIDE);
    assertThat(new ProofWords(proof).lines())
        .anyMatch(
            l -> l.contains("thicker edge") && l.endsWith("no side of the plan is called A–H."));
  }
}
