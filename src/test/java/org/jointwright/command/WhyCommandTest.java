package org.jointwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jointwright.app.PlanFiles;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why joints are where they are, on the command line. */
class WhyCommandTest {
  private static final String ELL = "src/test/resources/cases/laid/L_drive_36x44_4in.json";

  @Test
  void checkSaysWhyEachJointIsThere() {
    Run run = Run.of("check", ELL, "--why");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith(Run.of("check", ELL).out())
        .contains(
            " (J1 in the plan file): why here?\n  It starts at inside corner D.\n",
            "\n"
                + "  Without it a panel goes round inside corner D, 270 degrees where 185 are the"
                + " most, and a crack starts there.\n",
            " (J2 in the plan file): why here?\n",
            "\n  Rule M1, joint spacing: ");
  }

  @Test
  void checkSaysSoOfTheJointsThatAreNamed() {
    Run run = Run.of("check", ELL, "--joint", "J2", "--joint", "J4");
    assertThat(run.out())
        .contains("(J2 in the plan file): why here?", "(J4 in the plan file): why here?")
        .doesNotContain("(J1 in the plan file)", "(J3 in the plan file)");
  }

  @Test
  void jointsAreCalledByTheirNumbersOnTheSheet() {
    Plan plan = ((PlanReading.ReadPlan) PlanFiles.open(Path.of(ELL))).plan();
    for (Numbering.Item item : Numbering.of(plan).items()) {
      String number = Integer.toString(item.number());
      String out = Run.of("check", ELL, "--joint", number).out();
      assertThat(out.split("why here\\?", -1)).hasSize(1 + item.joints().size());
      for (Joint j : item.joints()) {
        assertThat(out).contains("slab, joint " + number + " (" + j.id() + " in the plan file): ");
        String json = Run.of("check", ELL, "--json").out();
        assertThat(json.replaceAll("\\s+", " "))
            .contains("\"id\": \"" + j.id() + "\", \"number\": " + number + ",");
      }
    }
  }

  @Test
  void postsThatShareABoxOutAreBothNamed(@TempDir Path folder) {
    String laid = folder.resolve("laid.jointwright.json").toString();
    Run.fed(
        """
        {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "patio",
          "use": "foot", "outline": [[0, 0], [20, 0], [20, 14], [0, 14]]}],
         "fixed": [
          {"id": "post A", "slab": "patio", "shape": {"circle": {"at": [12, 6], "diameter": "6 in"}}},
          {"id": "post B", "slab": "patio",
           "shape": {"circle": {"at": ["160 in", 6.5], "diameter": "6 in"}}}]}
        """,
        "joint",
        "-",
        "-o",
        laid);
    assertThat(Run.of("check", laid, "--why").out())
        .contains(
            "the box-out of post A and post B.", "Filler the full depth round post A and post B:")
        .doesNotContain("box-out of post A.", "round post A:");
  }

  @Test
  void aJointThatIsNotThereIsNamed() {
    Run run = Run.of("check", ELL, "--joint", "J99");
    assertThat(run.code()).isEqualTo(Outcome.USAGE);
    assertThat(run.error()).contains("J99", "--why");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void theLayoutOutputListsTheReasonsOfEachJoint() {
    Run run = Run.of("check", ELL, "--json");
    assertThat(run.out())
        .contains(
            "\"reasons\"",
            "\"from\": \"inside-corner\"",
            "\"letter\": \"D\"",
            "\"without\"",
            "\"computed\": false",
            "\"message\": \"Without it a panel goes round inside corner D, 270 degrees where 185"
                + " are the most, and a crack starts there.\"");
    assertThat(run.out().split("\"origins\"", -1)).hasSize(1 + 8);
  }

  @Test
  void whereTwoSlabsMeetNothingIsSaidOfLeavingTheJointOut(@TempDir Path folder) {
    String laid = folder.resolve("laid.jointwright.json").toString();
    Run.of("joint", "samples/drive-approach-walk.jointwright.json", "-o", laid);
    assertThat(Run.of("check", laid, "--joint", "J5").out())
        .contains("It is where approach begins")
        .doesNotContain("no rule would break");
  }

  @Test
  void theWayRoundAHalfCircleIsNotSaidToLieBetweenOneSideAndItself(@TempDir Path folder)
      throws IOException {
    Path plan = folder.resolve("half-round.jointwright.json");
    Files.writeString(
        plan,
        """
        {"format": "jointwright-plan", "version": 1, "unit": "ft", "slabs": [{"id": "patio",
          "outline": [{"at": [0, 0], "via": [9, -9]}, [18, 0]],
          "joints": [{"path": [[9, 0], [9, -9]]}]}]}
        """);
    assertThat(Run.of("check", plan.toString(), "--why").out())
        .contains(
            "It stands half way round from one end of side B–A to the other, 14′-1⅝″ from each.")
        .doesNotContain("between side B–A and side B–A");
  }
}
