package org.jointwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Area;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Concrete by its color, surfaces by their finish: of the drive with approach and walk. */
class MixesTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static final Finishing ADOBE = Finishing.UNSAID.withColor("adobe");

  private static Takeoff of(Map<Integer, Finishing> finishings) {
    Plan plan = LaidPlans.plan("drive-approach-walk.jointwright");
    for (Map.Entry<Integer, Finishing> f : finishings.entrySet()) {
      Slab slab = plan.slabs().get(f.getKey());
      plan = plan.withSlab(slab.id(), s -> s.withFinishing(f.getValue()));
    }
    return Takeoff.of(Layouts.of(plan), UnitSystem.FEET_INCHES);
  }

  private static double yards(Line line) {
    return ((Volume) line.amount().value()).in(VolumeUnit.CUBIC_YARD);
  }

  private static double feet2(Line line) {
    return ((Area) line.amount().value()).squareInches() / 144;
  }

  @Test
  void aColoredWalkIsOrderedByItself() {
    Takeoff t = of(Map.of(2, ADOBE));

    // Of 12.1991 yd3 the walk is 0.5926; its share of the allowance of 0.5969 yd3 is 0.0290.
    // 0.6216 yd3 for the walk and 12.1744 yd3 for the rest, each to the next quarter.
    assertThat(yards(t.of(Item.COLORED).getFirst())).isCloseTo(0.75, within(1e-9));
    assertThat(yards(t.of(Item.PLAIN).getFirst())).isCloseTo(12.25, within(1e-9));
    assertThat(yards(t.of(Item.CONCRETE).getFirst())).isCloseTo(13, within(1e-9));
    // 12.25 yd3 in two trucks, the walk in one of its own, which is a short load.
    Line loads = t.of(Item.LOADS).getFirst();
    assertThat(loads.amount().value()).isEqualTo(3);
    assertThat(loads.how()).anyMatch(s -> s.key().endsWith("shortLoad"));
    assertThat(new OrderWords(WORDS).colors(t))
        .isEqualTo(
            "Color in the mix: adobe 0.75 yd³, no color 12.25 yd³. Each in trucks of its own; ask"
                + " the plant what it needs.");
  }

  @Test
  void oneColorForAllIsOneMix() {
    Takeoff t = of(Map.of(0, ADOBE, 1, ADOBE, 2, ADOBE));

    assertThat(t.of(Item.PLAIN)).isEmpty();
    assertThat(yards(t.of(Item.COLORED).getFirst())).isCloseTo(13, within(1e-9));
    assertThat(yards(t.of(Item.CONCRETE).getFirst())).isCloseTo(13, within(1e-9));
    assertThat(t.of(Item.LOADS).getFirst().amount().value()).isEqualTo(2);
    assertThat(new OrderWords(WORDS).colors(t))
        .isEqualTo("Color in the mix: adobe. Ask the plant what it needs.");
  }

  @Test
  void capitalsAndSpacesMakeNoOtherColor() {
    Takeoff t = of(Map.of(0, ADOBE, 1, ADOBE.withColor("Adobe"), 2, ADOBE.withColor(" ADOBE ")));

    assertThat(t.of(Item.COLORED)).hasSize(1);
    assertThat(t.of(Item.COLORED).getFirst().of()).containsExactly("adobe");
    assertThat(of(Map.of(0, ADOBE, 1, ADOBE.withColor("adobe red"))).of(Item.COLORED)).hasSize(2);
  }

  @Test
  void oneColorIsShakenOnHoweverItIsWritten() {
    Finishing shaken = ADOBE.withColoring(Coloring.SHAKE_ON);
    Takeoff t = of(Map.of(0, shaken, 2, shaken.withColor("Adobe ")));

    assertThat(t.of(Item.SHAKE_ON)).hasSize(1);
    assertThat(feet2(t.of(Item.SHAKE_ON).getFirst())).isCloseTo(666 + 48, within(0.5));
  }

  @Test
  void whatIsShakenOnIsNoMixOfItsOwn() {
    Takeoff t = of(Map.of(2, ADOBE.withColoring(Coloring.SHAKE_ON)));
    Takeoff bare = of(Map.of());

    assertThat(t.of(Item.COLORED)).isEmpty();
    assertThat(t.of(Item.CONCRETE)).isEqualTo(bare.of(Item.CONCRETE));
    assertThat(t.of(Item.LOADS)).isEqualTo(bare.of(Item.LOADS));
    assertThat(feet2(t.of(Item.SHAKE_ON).getFirst())).isCloseTo(48, within(1e-6));
    assertThat(new OrderWords(WORDS).colors(t)).isEmpty();
  }

  @Test
  void aColorThatIsNotChosenIsOrderedAsSuch() {
    Takeoff t = of(Map.of(2, Finishing.UNSAID.withFinish(Optional.of(Finish.COLORED))));

    assertThat(new OrderWords(WORDS).colors(t)).startsWith("Color in the mix: not chosen yet 0.75");
    assertThat(new OrderWords(WORDS).name(t.of(Item.COLORED).getFirst()))
        .isEqualTo("Color not chosen yet in the mix, to order");
  }

  @Test
  void surfacesAreCountedByTheirFinishWhateverTheirColor() {
    Finishing broom = Finishing.UNSAID.withFinish(Optional.of(Finish.BROOM));
    Finishing colored = Finishing.UNSAID.withFinish(Optional.of(Finish.COLORED));
    Finishing stamped =
        Finishing.UNSAID.withFinish(Optional.of(Finish.STAMPED)).withPattern("ashlar");
    Takeoff t = of(Map.of(0, broom, 1, stamped, 2, colored));

    List<Line> lines = t.of(Item.FINISH);
    assertThat(lines.stream().map(new OrderWords(WORDS)::name))
        .containsExactly("Finish: broom", "Finish: stamped, pattern ashlar");
    assertThat(feet2(lines.getFirst())).isCloseTo(666 + 48, within(0.5));
    assertThat(of(Map.of()).of(Item.FINISH)).isEmpty();
  }
}
