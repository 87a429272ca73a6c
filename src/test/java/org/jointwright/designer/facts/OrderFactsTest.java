package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Plan;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** The order as the window shows it: the figures are those of the takeoff, the mix is typed. */
class OrderFactsTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final Words METRIC = Words.of(Language.SPANISH, UnitSystem.METRIC);

  private static Desk desk() {
    Plan plan = LaidPlans.plan("drive-approach-walk.jointwright");
    return Desk.opened(plan, Path.of("drive.jointwright.json")).withStep(Step.ORDER);
  }

  private static Row row(Desk desk, Words words, String id) {
    return FactsOf.desk(desk, words).rows().stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Desk typed(Desk desk, Words words, String id, String text) {
    return ((Row.Typed) row(desk, words, id)).change().apply(text).apply(desk);
  }

  private static Mix mix(Desk desk) {
    return desk.plan().mix();
  }

  @Test
  void allThatIsCountedIsShownWithHowOnRequest() {
    Desk desk = desk();
    Takeoff takeoff = Takeoff.of(Layouts.of(desk.plan()), UnitSystem.FEET_INCHES);
    OrderWords said = new OrderWords(WORDS);
    Facts facts = FactsOf.desk(desk, WORDS);
    List<String> notes = facts.notes().stream().map(Facts.Note::text).toList();
    assertThat(takeoff.lines())
        .isNotEmpty()
        .allSatisfy(l -> assertThat(notes).contains(said.name(l) + ": " + said.amount(l)));
    assertThat(((Row.Shown) facts.rows().getFirst()).value())
        .isEqualTo(said.amount(takeoff.of(Item.CONCRETE).getFirst()));
    Deed how = facts.deeds().stream().filter(d -> d.id().equals("order-how")).findFirst().get();
    Desk told = ((Deed.OnDesk) how.what()).change().apply(desk);
    assertThat(told.notice().orElseThrow().lines()).hasSize(takeoff.lines().size());
  }

  @Test
  void theMixIsTypedAndUndone() {
    Desk desk = typed(desk(), WORDS, "mix-strength", "4,500 psi");
    assertThat(mix(desk).strength()).contains(4500);
    desk = typed(desk, WORDS, "mix-slump", "5");
    assertThat(mix(desk).slump()).contains(Length.inches(5));
    assertThat(EditNames.of(desk.history().past().getLast(), WORDS)).isEqualTo("the mix");
    assertThat(mix(desk.undone()).slump()).isEmpty();
    Desk usual = typed(desk, WORDS, "mix-strength", " ");
    assertThat(mix(usual).strength()).as("an empty box is the usual again").isEmpty();
    Row.Choice stone = (Row.Choice) row(desk, WORDS, "mix-stone");
    assertThat(mix(stone.change().apply(0).apply(desk)).stone()).isEqualTo(Length.inches(3.0 / 8));
    Row.Tick fiber = (Row.Tick) row(desk, WORDS, "mix-fiber");
    assertThat(mix(fiber.change().apply(true).apply(desk)).fiber()).isTrue();
    Row.Choice exposure = (Row.Choice) row(desk, WORDS, "mix-exposure");
    assertThat(mix(exposure.change().apply(3).apply(desk)).exposure())
        .isEqualTo(Mix.Exposure.DEICERS);
  }

  @Test
  void megapascalsAreReadWhereTheyAreShownAndWhereTheyAreSaid() {
    assertThat(mix(typed(desk(), METRIC, "mix-strength", "25")).strength())
        .as("25 / 0.00689476, NIST SP 811, appendix B.8 (from memory)")
        .contains(3626);
    assertThat(mix(typed(desk(), WORDS, "mix-strength", "25 MPa")).strength()).contains(3626);
    assertThat(mix(typed(desk(), METRIC, "mix-strength", "4000 psi")).strength()).contains(4000);
  }

  @Test
  void figuresThatNobodyOrdersAreRefused() {
    for (String text : List.of("1499", "12001", "strong", "-4000", "4.000.000")) {
      assertThatThrownBy(() -> typed(desk(), WORDS, "mix-strength", text))
          .as(text)
          .isInstanceOf(BadFigure.class);
    }
    assertThat(mix(typed(desk(), WORDS, "mix-strength", "1500")).strength()).contains(1500);
    assertThat(mix(typed(desk(), WORDS, "mix-strength", "12000")).strength()).contains(12_000);
    assertThatThrownBy(() -> typed(desk(), WORDS, "mix-slump", "10.1"))
        .isInstanceOf(BadFigure.class);
    assertThat(mix(typed(desk(), WORDS, "mix-slump", "10")).slump())
        .isEqualTo(Optional.of(Length.inches(10)));
  }

  @Test
  void blankPaperHasAMixAndNothingToCount() {
    Facts facts = FactsOf.desk(Desk.blank().withStep(Step.ORDER), WORDS);
    assertThat(facts.rows()).hasSize(5);
    assertThat(facts.deeds()).isEmpty();
  }
}
