package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Mix.Exposure;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Features, given joints, zones, the choice of a layout and pours, in and out of the file. */
class NewPartsTest {
  private static PlanReading.ReadPlan read(String slab, String more) {
    return (PlanReading.ReadPlan)
        PlanReader.read(
            "{\"format\": \"jointwright-plan\", \"version\": 1, \"slabs\": [{\"id\": \"a\", "
                + slab
                + "}]"
                + more
                + "}");
  }

  private static final String SQUARE = "\"outline\": [[0, 0], [20, 0], [20, 20], [0, 20]]";
  private static final String CLOCKWISE = "\"outline\": [[0, 0], [0, 30], [20, 30], [20, 0]]";

  @Test
  void finishIsReadAndWrittenAndNothingWhereItIsNotSaid() {
    Plan plan = read(SQUARE + ", \"finish\": \"exposed-aggregate\"", "").plan();

    assertThat(plan.slabs().getFirst().finish()).contains(Finish.EXPOSED_AGGREGATE);
    assertThat(PlanWriter.write(plan)).contains("\"finish\": \"exposed-aggregate\"");
    assertThat(PlanWriter.write(read(SQUARE, "").plan())).doesNotContain("finish");
  }

  @Test
  void colorAndPatternComeBackAsTheyWereNamed() {
    String more =
        SQUARE
            + ", \"finish\": \"stamped\", \"color\": \"Adobe & slate\", \"coloring\": \"shake-on\","
            + " \"pattern\": \"ashlar\"";
    Plan plan = read(more, "").plan();

    assertThat(plan.slabs().getFirst().finishing())
        .isEqualTo(
            new Finishing(
                Optional.of(Finish.STAMPED), "Adobe & slate", Coloring.SHAKE_ON, "ashlar"));
    String written = PlanWriter.write(plan);
    Plan again = ((PlanReading.ReadPlan) PlanReader.read(written)).plan();
    assertThat(again.slabs().getFirst().finishing()).isEqualTo(plan.slabs().getFirst().finishing());
    assertThat(PlanWriter.write(read(SQUARE, "").plan()))
        .doesNotContain("color", "coloring", "pattern");
  }

  /** These keys had no meaning once: what others wrote there is kept, not refused. */
  @ParameterizedTest
  @CsvSource({"color, 60, true", "color, 61, false", "pattern, 60, true", "pattern, 61, false"})
  void namesOfColorsAndPatternsHaveALimit(String key, int length, boolean isUsed) {
    String text = "\"" + "x".repeat(length) + "\"";
    PlanReading.ReadPlan reading = read(SQUARE + ", \"" + key + "\": " + text, "");

    Finishing finishing = reading.plan().slabs().getFirst().finishing();
    assertThat(finishing.color() + finishing.pattern()).hasSize(isUsed ? length : 0);
    assertThat(reading.repairs()).hasSize(isUsed ? 0 : 1);
    assertThat(PlanWriter.write(reading.plan())).contains("\"" + key + "\": " + text);
  }

  @ParameterizedTest
  @CsvSource({"color, 7", "pattern, true", "coloring, '\"sprayed\"'", "coloring, 3"})
  void whatIsNoNameIsLeftAsItIs(String key, String value) {
    PlanReading.ReadPlan reading = read(SQUARE + ", \"" + key + "\": " + value, "");

    assertThat(reading.plan().slabs().getFirst().finishing()).isEqualTo(Finishing.UNSAID);
    assertThat(reading.repairs().getFirst().say(Words.english(UnitSystem.FEET_INCHES)))
        .contains("slabs[0]." + key, "left as it is");
    assertThat(PlanWriter.write(reading.plan())).contains("\"" + key + "\": " + value);
  }

  @Test
  void finishNobodyKnowsIsRefusedWithThoseThereAre() {
    PlanReading reading =
        PlanReader.read(
            "{\"format\": \"jointwright-plan\", \"version\": 1, \"slabs\": [{\"finish\": \"waxed\","
                + " "
                + SQUARE
                + "}]}");

    Words words = Words.english(UnitSystem.FEET_INCHES);
    assertThat(((PlanReading.Refused) reading).problems().getFirst().say(words))
        .contains("finish", "waxed", "broom", "stamped");
  }

  @Test
  void everyPartIsRead() {
    Plan plan =
        read(
                SQUARE
                    + """
                    , "keepClear": [{"name": "drain line", "ring": [[9, -1], [11, -1], [11, 21], [9, 21]]}],
                    "edges": {"0": {"against": "building", "features": [
                      {"kind": "garage-door", "from": "2 ft", "to": "18 ft"}]}},
                    "jointing": {"choice": {"linedUpWith": 1}}
                    """,
                """
                , "given": [{"path": [[0, 0], [0, -10]]}], "pour": {"most": "9 yd3", "strip": "12 ft"}
                """)
            .plan();
    Slab slab = plan.slabs().getFirst();

    assertThat(slab.edge(0).against()).isEqualTo(Against.BUILDING);
    Feature door = slab.edge(0).features().getFirst();
    assertThat(door.kind()).isEqualTo(FeatureKind.GARAGE_DOOR);
    assertThat(door.from()).isEqualTo(24);
    assertThat(door.to()).isEqualTo(216);
    assertThat(slab.keepClear()).hasSize(1);
    assertThat(slab.keepClear().getFirst().name()).isEqualTo("drain line");
    assertThat(slab.jointing().preference()).isEqualTo(new Preference.LinedUpWith(1));
    assertThat(plan.given())
        .containsExactly(GivenJoint.of(Path.straight(new Point(0, 0), new Point(0, -120))));
    assertThat(plan.pour().most()).contains(Volume.cubicYards(9));
    assertThat(plan.pour().strip()).contains(Length.feet(12));
  }

  @Test
  void planThatSaysNothingOfThemHasNone() {
    Plan plan = read(SQUARE, "").plan();

    assertThat(plan.given()).isEmpty();
    assertThat(plan.pour()).isEqualTo(Pour.UNLIMITED);
    assertThat(plan.slabs().getFirst().keepClear()).isEmpty();
    assertThat(plan.slabs().getFirst().jointing().preference()).isEqualTo(Preference.SHORTEST);
    assertThat(PlanWriter.write(plan)).doesNotContain("given", "pour", "keepClear", "choice");
  }

  @Test
  void featuresOfAClockwiseRingStandWhereTheyStood() {
    Slab slab =
        read(
                CLOCKWISE
                    + """
                    , "edges": {"0": {"features": [{"kind": "walk", "from": 4, "to": 9}]}},
                    "jointing": {"choice": {"linedUpWith": 0}}
                    """,
                "")
            .plan()
            .slabs()
            .getFirst();
    // The left side ran up from the corner at the origin; it now runs down to it, as edge 3.
    Feature walk = slab.edge(3).features().getFirst();
    assertThat(slab.edges().keySet()).containsExactly(3);
    assertThat(slab.outline().ring().edges().get(3).end()).isEqualTo(new Point(0, 0));
    assertThat(walk.from()).isEqualTo((30 - 9) * 12);
    assertThat(walk.to()).isEqualTo((30 - 4) * 12);
    assertThat(slab.jointing().preference()).isEqualTo(new Preference.LinedUpWith(3));
  }

  @Test
  void featureMayRunPastItsEdgeByWhatRoundingLeaves() {
    String door = ", \"edges\": {\"1\": {\"features\": [{\"from\": 2, \"to\": \"20 ft 3/8 in\"}]}}";
    assertThat(read(SQUARE + door, "").plan().slabs().getFirst().edge(1).features()).hasSize(1);
  }

  @Test
  void zoneOutsideItsSlabIsToldAndLeft() {
    PlanReading.ReadPlan read =
        read(SQUARE + ", \"keepClear\": [{\"ring\": [[30, 0], [31, 0], [31, 9]]}]", "");
    assertThat(read.repairs()).extracting(Remark::key).containsExactly("file.zoneOutside");
    assertThat(read.repairs()).extracting(Remark::place).containsExactly("slabs[0].keepClear[0]");
    assertThat(read.plan().slabs().getFirst().keepClear()).hasSize(1);
  }

  @Test
  void zoneOverTheSlabsEdgeOrRoundItIsNoRemark() {
    for (String ring :
        List.of("[[18, 5], [25, 5], [25, 6]]", "[[-9, -9], [40, -9], [40, 40], [-9, 40]]")) {
      assertThat(read(SQUARE + ", \"keepClear\": [{\"ring\": " + ring + "}]", "").repairs())
          .isEmpty();
    }
  }

  @Test
  void theMixIsReadAndWrittenAsItWas() {
    String mix =
        """
        , "mix": {"exposure": "deicers", "stone": "1 in", "strength": 4000, "slump": "5 in",
          "fiber": true, "color": "tan"}
        """;
    Plan plan = read(SQUARE, mix).plan();
    assertThat(plan.mix().exposure()).isEqualTo(Exposure.DEICERS);
    assertThat(plan.mix().stone()).isEqualTo(Length.inches(1));
    assertThat(plan.mix().strength()).contains(4000);
    assertThat(plan.mix().slump()).contains(Length.inches(5));
    assertThat(plan.mix().fiber()).isTrue();
    String written = PlanWriter.write(plan);
    assertThat(written).contains("\"color\": \"tan\"", "\"deicers\"", "\"5 in\"");
    assertThat(PlanWriter.write(((PlanReading.ReadPlan) PlanReader.read(written)).plan()))
        .isEqualTo(written);
    assertThat(plan.in(LengthUnit.METRE).mix()).isEqualTo(plan.mix());
  }

  @Test
  void thickenedEdgesAreReadAndWrittenAsTheyWere() {
    String edges =
        """
        , "edges": {"0": {"thickened": {"depth": "8 in", "over": "12 in", "bars": 2}},
          "1": {"against": "street", "thickened": {}}}
        """;
    Plan plan = read(SQUARE + edges, "").plan();
    Slab slab = plan.slabs().getFirst();
    assertThat(slab.edge(0).thickened().orElseThrow().depth()).contains(Length.inches(8));
    assertThat(slab.edge(0).thickened().orElseThrow().over()).contains(Length.inches(12));
    assertThat(slab.edge(1).thickened()).contains(Thickened.USUAL);
    assertThat(slab.edge(2).thickened()).isEmpty();
    String written = PlanWriter.write(plan);
    assertThat(written).contains("\"8 in\"", "\"12 in\"", "\"bars\": 2");
    assertThat(PlanWriter.write(((PlanReading.ReadPlan) PlanReader.read(written)).plan()))
        .isEqualTo(written);
  }

  @Test
  void thickenedEdgesHaveBounds() {
    PlanReading read =
        PlanReader.read(
            "{\"format\": \"jointwright-plan\", \"version\": 1, \"slabs\": [{\"id\": \"a\", "
                + SQUARE
                + ", \"edges\": {\"0\": {\"thickened\": {\"depth\": \"25 in\", \"over\": \"0.9"
                + " in\"}}}}]}");
    assertThat(((PlanReading.Refused) read).problems())
        .extracting(Remark::key)
        .containsExactlyInAnyOrder("file.thickenedOutOfBounds", "file.taperOutOfBounds");
  }

  @Test
  void stoneIsOneOfTheSizesThatAreSoldByEitherName() {
    assertThat(read(SQUARE, ", \"mix\": {\"stone\": \"20 mm\"}").plan().mix().stone())
        .isEqualTo(Length.inches(0.75));
    PlanReading none =
        PlanReader.read(
            "{\"format\": \"jointwright-plan\", \"version\": 1, \"slabs\": [{\"id\": \"a\", "
                + SQUARE
                + "}], \"mix\": {\"stone\": \"0.86 in\", \"slump\": \"2 ft\"}}");
    assertThat(((PlanReading.Refused) none).problems())
        .extracting(Remark::key)
        .containsExactlyInAnyOrder("file.noSuchStone", "file.slumpOutOfBounds");
  }

  @Test
  void bareVolumesCountInWhatTheSystemOrders() {
    assertThat(read(SQUARE, ", \"pour\": {\"most\": 9}").plan().pour().most())
        .contains(Volume.cubicYards(9));
    assertThat(read(SQUARE, ", \"pour\": {\"most\": 9}, \"unit\": \"m\"").plan().pour().most())
        .contains(Volume.of(9, VolumeUnit.CUBIC_METRE));
  }

  @Test
  void anyVolumeIsReadBackAsItWasWritten() {
    long seed = 20261126;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      VolumeUnit unit = VolumeUnit.values()[random.nextInt(3)];
      Volume volume = Volume.of(4 + random.nextInt(4000) / 16.0 + random.nextDouble(), unit);
      Plan plan =
          Plan.EMPTY.withPour(new Pour(Optional.of(volume), Optional.empty(), Kept.NOTHING));
      String written = PlanWriter.write(plan);
      String again = PlanWriter.write(PlanRoundTripTest.read(written));
      assertThat(again).as("seed %d, try %d", seed, i).isEqualTo(written);
    }
  }
}
