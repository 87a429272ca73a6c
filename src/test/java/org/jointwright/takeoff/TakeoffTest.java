package org.jointwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.jointwright.check.Sketch;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.measure.Weight;
import org.jointwright.plan.Against;
import org.jointwright.plan.How;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;

/** Quantities, worked out by hand for two samples and compared with published figures. */
class TakeoffTest {
  private static final Offset<Double> NEAR = within(1e-4);

  private static Takeoff sample(String name, UnitSystem sold) {
    Path file = Path.of("samples", name + ".jointwright.json");
    Plan plan = ((PlanReading.ReadPlan) PlanReader.read(file)).plan();
    return Takeoff.of(Layouts.of(plan), sold);
  }

  private static Takeoff of(Sketch sketch) {
    return Takeoff.of(Layouts.of(sketch.plan()), UnitSystem.FEET_INCHES);
  }

  private static double yards(Line line) {
    return ((Volume) line.amount().value()).in(VolumeUnit.CUBIC_YARD);
  }

  private static double metres3(Line line) {
    return ((Volume) line.amount().value()).in(VolumeUnit.CUBIC_METRE);
  }

  private static double feet(Line line) {
    return ((Length) line.amount().value()).inches() / 12;
  }

  @Test
  void theDriveWithApproachAndWalk() {
    Takeoff t = sample("drive-approach-walk", UnitSystem.FEET_INCHES);

    // Drive 18.5 x 36 ft = 666 ft2, a third of a foot: 222 ft3, in 27ths 8.2222 yd3.
    // Approach (24.5 + 18.5) / 2 x 8.5 ft = 182.75 ft2, half a foot: 91.375 ft3, 3.3843 yd3.
    // Walk 12 x 4 ft = 48 ft2, a third of a foot: 16 ft3, 0.5926 yd3.
    List<Line> slabs = t.of(Item.SLAB);
    assertThat(yards(slabs.get(0))).isCloseTo(222 / 27.0, NEAR);
    assertThat(yards(slabs.get(1))).isCloseTo(91.375 / 27, NEAR);
    assertThat(yards(slabs.get(2))).isCloseTo(16 / 27.0, NEAR);
    // 896.75 ft2 an eighth of an inch higher: 9.3411 ft3, 0.3460 yd3. Two hundredths of
    // 12.1991 + 0.3460 yd3 lost: 0.2509. Both 0.5969 yd3, 4.9 percent, between the usual 4 and 10.
    assertThat(yards(t.of(Item.ALLOWANCE).getFirst())).isCloseTo(0.5969, NEAR);
    // 12.7960 yd3, to the next quarter.
    assertThat(yards(t.of(Item.CONCRETE).getFirst())).isCloseTo(13, NEAR);
    assertThat(t.of(Item.LOADS).getFirst().amount().value()).isEqualTo(2);

    // The base is as deep as its slab in this plan: 329.375 ft3 at 139 lb are 45,783 lb,
    // 5 percent more 48,072 lb, 24.0361 tons; loose at 2,600 lb/yd3 18.489 yd3.
    Line stone = t.of(Item.STONE).getFirst();
    assertThat(((Weight) stone.amount().value()).tons()).isCloseTo(24.0361, NEAR);
    assertThat(((Volume) stone.of().getFirst()).in(VolumeUnit.CUBIC_YARD))
        .isCloseTo(18.489, within(1e-3));

    // 4 in: drive 36 ft on the left, 36 - 4 on the right; walk 12 twice; between them 4. 96 ft.
    // 6 in: approach the root of 3 x 3 + 8.5 x 8.5 twice, 18.028; against the drive 18.5.
    List<Line> boards = t.of(Item.BOARDS);
    assertThat(feet(boards.get(0))).isCloseTo(96, NEAR);
    assertThat(feet(boards.get(1))).isCloseTo(18.5 + 2 * Math.hypot(3, 8.5), NEAR);
    assertThat(t.of(Item.STOPS)).as("no stop besides the boards between slabs").isEmpty();
    // 36: 13, 32: 12, 12: 5 twice, 4: 3, 9.014: 5 twice, 18.5: 8.
    assertThat(t.of(Item.STAKES).getFirst().amount().value()).isEqualTo(56);

    // 896.75 ft2 at 200 ft2 to a gallon.
    Liquid cure = (Liquid) t.of(Item.CURE).getFirst().amount().value();
    assertThat(cure.gallons()).isCloseTo(4.48375, NEAR);
  }

  @Test
  void theShedPadInMetres() {
    Takeoff t = sample("shed-pad-with-a-drain", UnitSystem.METRIC);

    // 4.8 x 3.6 - 0.3 x 0.3 = 17.19 m2, 0.125 m thick: 2.14875 m3.
    assertThat(metres3(t.of(Item.SLAB).getFirst())).isCloseTo(2.14875, NEAR);
    // An eighth of an inch, 3.175 mm: 0.05458 m3; 2 percent of 2.20333: 0.04407. Both 0.09864.
    assertThat(metres3(t.of(Item.ALLOWANCE).getFirst())).isCloseTo(0.09864, NEAR);
    // 2.24739 m3, to the next quarter.
    assertThat(metres3(t.of(Item.CONCRETE).getFirst())).isCloseTo(2.25, NEAR);
    // Under the drain's box too: 17.28 m2, 0.15 m: 2.592 m3 at 2,226.6 kg are 5.7713 t, and 5
    // percent more.
    assertThat(((Weight) t.of(Item.STONE).getFirst().amount().value()).tonnes())
        .isCloseTo(6.0598, within(1e-3));
    // Three sides; the fourth runs along old concrete. At 0.9 m: 7, 5 and 5 stakes.
    assertThat(feet(t.of(Item.BOARDS).getFirst()) * 0.3048).isCloseTo(12.0, NEAR);
    assertThat(t.of(Item.STAKES).getFirst().amount().value()).isEqualTo(17);
  }

  /** A web page on ordering: 1,080 ft2 at about 5 in are 16.6 yd3; exactly 1080 x 5/12/27. */
  @Test
  void aPublishedSlab() {
    Takeoff t = of(Sketch.rectangle(27 * 12, 40 * 12).thick(5));
    assertThat(yards(t.of(Item.SLAB).getFirst())).isCloseTo(16.667, within(1e-3));
  }

  /** NRMCA Concrete in Practice 8: an error of 1/8 in in a slab of 4 in is 3 percent, 1 in 32. */
  @Test
  void aPublishedErrorOfThickness() {
    Takeoff t = of(Sketch.rectangle(240, 240).thick(4));
    double plain = yards(t.of(Item.SLAB).getFirst());
    double allowance = yards(t.of(Item.ALLOWANCE).getFirst());
    assertThat(allowance / plain).isCloseTo(1 / 32.0 + 0.02 * (1 + 1 / 32.0), NEAR);
  }

  @Test
  void aThickSlabGetsTheUsualLeastAllowance() {
    // 12 in: the eighth is 1.04 percent, with what is lost 3.06: under 4.
    Takeoff t = of(Sketch.rectangle(240, 240).thick(12));
    double plain = yards(t.of(Item.SLAB).getFirst());
    assertThat(yards(t.of(Item.ALLOWANCE).getFirst()) / plain).isCloseTo(0.04, NEAR);
    assertThat(t.of(Item.ALLOWANCE).getFirst().how()).hasSize(3);
  }

  @Test
  void whatIsOrderedIsTheNextQuarterYardAndNoMore() {
    for (double side = 60; side < 400; side += 7.3) {
      Takeoff t = of(Sketch.rectangle(side, 120).thick(4));
      double wanted = yards(t.of(Item.SLAB).getFirst()) + yards(t.of(Item.ALLOWANCE).getFirst());
      double ordered = yards(t.of(Item.CONCRETE).getFirst());
      assertThat(ordered * 4).isCloseTo(Math.rint(ordered * 4), NEAR);
      assertThat(ordered).isBetween(wanted - 1e-9, wanted + 0.25);
    }
  }

  @Test
  void cutsAndFillerAreCountedByTheirSize() {
    Takeoff t =
        of(
            Sketch.rectangle(240, 120)
                .thick(4)
                .edge(3, Against.BUILDING)
                .filler(0, 120, 0, 0)
                .joint(80, 0, 80, 120)
                .joint(160, 0, 160, 120)
                .made(How.TOOLED, 1.25)
                .joint(JointKind.CONSTRUCTION, 120, 0, 120, 120));
    assertThat(t.of(Item.SAWN)).singleElement().satisfies(l -> assertThat(feet(l)).isEqualTo(10));
    assertThat(t.of(Item.SAWN).getFirst().of()).containsExactly(Length.inches(1));
    assertThat(t.of(Item.TOOLED).getFirst().of()).containsExactly(Length.inches(1.25));
    assertThat(t.of(Item.FILLER).getFirst().of())
        .containsExactly(Length.inches(0.5), Length.inches(4));
    assertThat(feet(t.of(Item.FILLER).getFirst())).isEqualTo(10);
    assertThat(feet(t.of(Item.STOPS).getFirst())).isEqualTo(10);
    assertThat(feet(t.of(Item.BOARDS).getFirst())).isEqualTo(50);
  }

  /** Loads of 10 yd3; under 4 yd3 many plants charge more (truck suppliers’ pages). */
  @Test
  void aLastLoadThatIsShortIsSaid() {
    assertThat(loads(13.75).how()).hasSize(2);
    assertThat(loads(14).how()).as("4 yd3 for the last truck, no less").hasSize(1);
    assertThat(loads(20).how()).as("two full trucks").hasSize(1);
    assertThat(loads(20.25).how()).as("a third truck for a quarter yard").hasSize(2);
  }

  private static Line loads(double yards) {
    // Of 6 in: 54 ft2 to the yard. An eighth more, 1 in 48, and 2 percent of both.
    double plain = (yards - 1e-6) / (1 + 1 / 48.0) / 1.02;
    return of(Sketch.rectangle(plain * 54 * 144 / 120, 120).thick(6)).of(Item.LOADS).getFirst();
  }

  @Test
  void jointsTakeNoConcreteAway() {
    Area whole = (Area) of(Sketch.rectangle(240, 120)).of(Item.SURFACE).getFirst().amount().value();
    Area cut =
        (Area)
            of(Sketch.rectangle(240, 120).joint(80, 0, 80, 120))
                .of(Item.SURFACE)
                .getFirst()
                .amount()
                .value();
    assertThat(cut.squareInches()).isCloseTo(whole.squareInches(), NEAR);
  }
}
