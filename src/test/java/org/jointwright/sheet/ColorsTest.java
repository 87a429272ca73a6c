package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.sheet.owner.OwnersPlan;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Color and pattern of a slab stand on every sheet that somebody acts by. */
class ColorsTest {
  private static final SheetOptions OPTIONS =
      new SheetOptions("2026-05-04", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);

  private static final Finishing STAMPED =
      Finishing.UNSAID
          .withFinish(Optional.of(Finish.STAMPED))
          .withPattern("ashlar")
          .withColor("adobe");

  private static Layout layout(Finishing pad) {
    Plan plan = LaidPlans.plan("drive-walk-and-pad.jointwright");
    return Layouts.of(plan.withSlab("pad", s -> s.withFinishing(pad)));
  }

  private static List<String> texts(List<Page> pages) {
    return pages.stream().flatMap(p -> PageTexts.of(p).stream()).toList();
  }

  private static List<String> owner(Layout layout) {
    return OwnersPlan.sheet(layout, takeoff(layout), OPTIONS).leaves().stream()
        .flatMap(p -> PageTexts.in(p).stream())
        .toList();
  }

  private static Takeoff takeoff(Layout layout) {
    return Takeoff.of(layout, UnitSystem.FEET_INCHES);
  }

  @Test
  void theOwnerReadsWhatIsChosen() {
    assertThat(owner(layout(STAMPED)))
        .contains("Finish, pad", "stamped", "Pattern, pad", "ashlar", "Color, pad", "adobe");
  }

  @Test
  void theOwnerHasALineForAColorThatIsNotChosen() {
    Finishing open = Finishing.UNSAID.withFinish(Optional.of(Finish.COLORED));
    assertThat(owner(layout(open))).contains("Color").doesNotContain("Color, pad");
    assertThat(owner(layout(STAMPED))).doesNotContain("Color");
  }

  /** However long the names are, what is under the column keeps its room. */
  @ParameterizedTest
  @ValueSource(ints = {10, 25, 60})
  void longNamesLeaveTheRestItsRoom(int length) {
    Finishing named =
        STAMPED.withPattern("x ".repeat(length / 2)).withColor("y ".repeat(length / 2));
    Plan plan = layout(named).plan();
    for (int i = 0; i < plan.slabs().size(); i++) {
      String color = i + named.color();
      plan = plan.withSlab(plan.slabs().get(i).id(), s -> s.withFinishing(named.withColor(color)));
    }
    Layout layout = Layouts.of(plan);
    Sheet sheet = OwnersPlan.sheet(layout, takeoff(layout), OPTIONS);
    assertThat(Room.faults(SheetSet.of(List.of(sheet), plan.job(), OPTIONS).pages())).isEmpty();
  }

  @Test
  void theCrewReadsHowTheColorComesIn() {
    assertThat(told(layout(STAMPED)))
        .contains("pad stamped, pattern ashlar, color adobe in the mix");
    assertThat(told(layout(STAMPED.withColoring(Coloring.SHAKE_ON))))
        .contains("pad stamped, pattern ashlar, color adobe shaken on");
  }

  @Test
  void capitalsMakeNoOtherColor() {
    Plan plan =
        layout(STAMPED)
            .plan()
            .withSlab(
                "walk", s -> s.withFinishing(STAMPED.withColor("Adobe").withPattern("Ashlar")));
    assertThat(owner(Layouts.of(plan))).contains("Color, walk, pad", "Adobe");
    assertThat(told(Layouts.of(plan))).contains("walk, pad stamped, pattern Ashlar, color Adobe");
  }

  private static String told(Layout layout) {
    return texts(CutSheet.of(layout, OPTIONS)).stream().collect(Collectors.joining(" "));
  }

  @Test
  void thePlantReadsTheColorBesideTheMix() {
    Layout layout = layout(STAMPED);
    List<String> texts = texts(OrderSheet.of(layout.plan(), takeoff(layout), OPTIONS));
    assertThat(String.join(" ", texts))
        .contains("Color in the mix: adobe ", "ask the plant", "Color adobe in the mix, to");
    Layout plain = layout(STAMPED.withColor(""));
    assertThat(texts(OrderSheet.of(plain.plan(), takeoff(plain), OPTIONS)))
        .noneMatch(t -> t.contains("Color"));
  }
}
