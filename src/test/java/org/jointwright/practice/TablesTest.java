package org.jointwright.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.How;
import org.jointwright.plan.Jointing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablesTest {
  /** Ready-mix association guidelines, driveway joint spacing. */
  @ParameterizedTest
  @CsvSource({"3, 8", "3.5, 9", "4, 10", "5, 12", "6, 12"})
  void theAssociationTableIsReproduced(double thickness, double feet) {
    assertThat(CentreJoint.longest(Length.inches(thickness)).feet()).isEqualTo(feet);
  }

  /** The same guidelines: 12 ft wide and about 3-1/2 in thick, 16 ft wide and 6 in thick. */
  @ParameterizedTest
  @CsvSource({"12, 3.5, true", "16, 6, true", "9, 4, false", "12, 5, false"})
  void theGuidelinesCentreJointsAreReproduced(double feet, double thickness, boolean needed) {
    assertThat(CentreJoint.needed(Length.feet(feet), Length.inches(thickness))).isEqualTo(needed);
  }

  /** TM 5-809-12 and UFC 3-260-02: 125 % of the thickness, tapering back over 5 ft. */
  @ParameterizedTest
  @CsvSource({"4, 5.0", "6, 7.5"})
  void aThickenedEdgeIsAQuarterThicker(double thickness, double edge) {
    assertThat(Section.thickenedEdge(Length.inches(thickness)).inches())
        .isCloseTo(edge, within(1e-12));
    assertThat(Section.THICKENED_TAPER.value()).isEqualTo(Length.feet(5));
  }

  /** NRMCA CIP 6: a quarter of the thickness, 1 in at least; early-entry 1 in. */
  @ParameterizedTest
  @CsvSource({"3, 1, 1", "4, 1, 1", "5, 1.25, 1", "6, 1.5, 1", "8, 2, 1"})
  void aJointIsAQuarterOfTheThicknessDeep(double thickness, double sawn, double early) {
    Length t = Length.inches(thickness);
    assertThat(JointDepth.least(t, How.SAWN).inches()).isEqualTo(sawn);
    assertThat(JointDepth.least(t, How.TOOLED).inches()).isEqualTo(sawn);
    assertThat(JointDepth.least(t, How.EARLY_ENTRY).inches()).isEqualTo(early);
  }

  @Test
  void theDigIsSlabAndBaseBelowTheString() {
    assertThat(Section.digBelowString(Length.inches(4), Length.inches(4)))
        .isEqualTo(Length.inches(8));
  }

  /** NRMCA CIP 6 gives 1.5; TM 5-809-12 and ACI 330 1.25; a highway handbook 2. */
  @Test
  void theAspectIsOneAndAHalfUnlessThePlanSays() {
    assertThat(PanelShape.aspect(Jointing.DEFAULT)).isEqualTo(1.5);
    assertThat(PanelShape.ASPECT_CHOICES).extracting(Limit::value).containsExactly(1.25, 1.5, 2.0);
  }

  /** NRMCA CIP 6 counts from finishing; ACI 325.12R counts from placing. */
  @Test
  void theSawWindowsKeepTheirDatum() {
    assertThat(SawWindow.SAWN)
        .extracting(SawWindow::fromHours, SawWindow::toHours, SawWindow::since)
        .containsExactly(4.0, 12.0, SawWindow.Since.FINISHING);
    assertThat(SawWindow.SAWN_PAVEMENT)
        .extracting(SawWindow::fromHours, SawWindow::toHours, SawWindow::since)
        .containsExactly(2.0, 6.0, SawWindow.Since.PLACING);
  }

  /**
   * The rules of comparison: this program's own figures, so that layouts rank as finishers would.
   */
  @Test
  void layoutsAreComparedByTheseCosts() {
    assertThat(Cost.TEE.value()).isEqualTo(Length.feet(8));
    assertThat(Cost.Y.value()).isEqualTo(Length.feet(4));
    assertThat(Cost.MISSED.value()).isEqualTo(Length.feet(2));
    assertThat(Cost.EVEN.value()).isEqualTo(0.10);
    assertThat(Cost.UNEVEN.value()).isEqualTo(0.25);
    assertThat(List.of(Cost.TEE, Cost.Y, Cost.MISSED, Cost.EVEN, Cost.UNEVEN))
        .allMatch(l -> l.source().flag() == Flag.OWN_CHOICE);
  }

  /**
   * UFC 3-260-02, 2001, chapter 12, asks for spacings that are easily measured; the step is own.
   */
  @Test
  void marksAreWholeInchesOrWholeTenMillimetres() {
    assertThat(JointMarks.step(UnitSystem.FEET_INCHES).value()).isEqualTo(Length.inches(1));
    assertThat(JointMarks.step(UnitSystem.METRIC).value().inches())
        .isCloseTo(10 / 25.4, within(1e-12));
    assertThat(JointMarks.INCH.sources())
        .extracting(Cited::document, Cited::flag)
        .containsExactly(tuple("UFC 3-260-02", Flag.READ), tuple("", Flag.OWN_CHOICE));
    assertThat(JointMarks.METRIC.sources()).isEqualTo(JointMarks.INCH.sources());
    assertThat(JointMarks.MATCHED.document()).isEqualTo("ACPA wiki");
  }

  /** A highway handbook and the ACPA wiki ask for about square; the degrees are own figures. */
  @Test
  void jointsMeetEdgesWithinFifteenDegreesAndStandStraightWithinOne() {
    assertThat(Angles.EDGE.value()).isEqualTo(15.0);
    assertThat(Angles.EDGE.sources())
        .extracting(Cited::document)
        .containsExactly("Highway Engineering Handbook", "ACPA wiki", "");
    assertThat(Angles.SLANT.value()).isEqualTo(1.0);
    assertThat(Angles.BEND.value()).isEqualTo(1.0);
    for (Limit<Double> straight : List.of(Angles.SLANT, Angles.BEND)) {
      assertThat(straight.sources())
          .extracting(Cited::document, Cited::flag)
          .containsExactly(
              tuple("Highway Engineering Handbook", Flag.READ), tuple("", Flag.OWN_CHOICE));
    }
  }

  /** Own figures: no document says how small a panel may be, or how uneven panels. */
  @Test
  void panelsAreCompactAndEvenByOwnFigures() {
    assertThat(PanelShape.USUAL_FILL.value()).isEqualTo(0.60);
    assertThat(PanelShape.SMALLEST.value()).isEqualTo(0.20);
    assertThat(PanelShape.SPREAD.value()).isEqualTo(0.50);
    assertThat(List.of(PanelShape.USUAL_FILL, PanelShape.SMALLEST, PanelShape.SPREAD))
        .allMatch(l -> l.source().flag() == Flag.OWN_CHOICE);
  }
}
