package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Tape;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A slab’s joints are taped from its own corners, also where its side lies on another’s. */
class OwnCornersTest {
  private static Facts facts(String name) {
    SheetOptions options =
        new SheetOptions("", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);
    return Facts.of(Layouts.of(LaidPlans.plan(name)), options);
  }

  @Test
  void aPadBesideADriveIsTapedFromItsCorners() {
    Facts facts = facts("drive-walk-and-pad.jointwright");
    Map<Integer, Finder.Run> runs = facts.runs();
    // The pad’s side L–E is a part of the drive’s D–E, where they would be 7 and 9 ft from D.
    assertThat(facts.say(runs.get(11).from())).isEqualTo("3′-0″ L–E");
    assertThat(facts.say(runs.get(13).from())).isEqualTo("5′-0″ L–E");
    // The drive’s own joint on that line stays on the drive’s side.
    assertThat(facts.say(runs.get(4).to())).isEqualTo("3′-8″ D–E");
  }

  @Test
  void aSideWithMarksOfItsOwnIsListedAndOneWithoutIsNot() {
    List<String> pad = names(facts("drive-walk-and-pad.jointwright"));
    assertThat(pad).contains("L–E", "D–E").doesNotHaveDuplicates();
    // The landing’s L–E lies on the patio’s A–E and has no mark.
    assertThat(names(facts("patio-landing-and-walk.jointwright")))
        .contains("A–E")
        .doesNotContain("L–E", "E–L");
  }

  private static List<String> names(Facts facts) {
    return facts.chains().stream().map(c -> c.tape().name()).toList();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noJointIsTapedAlongAnotherSlabWhereItsOwnSideLies(String name) {
    Facts facts = facts(name);
    Plan plan = LaidPlans.plan(name);
    for (Finder.Run run : facts.runs().values()) {
      for (Whereabouts end : List.of(run.from(), run.to())) {
        if (end instanceof Whereabouts.OnTape on && on.tape().isStraight()) {
          Tape tape = on.tape();
          boolean own = tape.slab().equals(run.item().slab());
          assertThat(own || plan.slabs().size() > 1).isTrue();
          assertThat(
                  own
                      || facts.lettering().within().stream()
                          .noneMatch(
                              t ->
                                  t.slab().equals(run.item().slab())
                                      && t.carries(tape.path().at(on.along()), Sides.ON)))
              .as("joint %d of %s", run.item().number(), name)
              .isTrue();
        }
      }
    }
  }

  static List<String> plans() {
    return LaidPlans.names();
  }
}
