package org.jointwright.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.jointwright.app.Answer;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the engine writes that a joint is for agrees with what it takes its place from. */
class PurposeTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "L_drive_36x44_4in",
        "T_pad_40x30_5in",
        "plus_pad_30x30_4in",
        "planter_r3_cut_into_edge_20x18_4in",
        "edges_patio_in_house_corner_4in",
        "multi_drive_approach_walk"
      })
  void theFileSaysWhatTheReasonsSay(String name) {
    Path file = Path.of("src/test/resources/cases/open/" + name + ".json");
    if (!(PlanReader.read(file) instanceof PlanReading.ReadPlan read)) {
      throw new IllegalStateException(name + " is refused");
    }
    Answer answer = Answer.laid(read.plan());
    for (Slab slab : answer.plan().slabs()) {
      Map<String, Purpose> written =
          slab.joints().stream().collect(Collectors.toMap(Joint::id, Joint::purpose));
      Map<String, Purpose> found =
          answer.reasons().stream()
              .filter(r -> r.slab().equals(slab.id()))
              .collect(Collectors.toMap(Reason::joint, Reason::purpose));
      assertThat(found).isNotEmpty().isEqualTo(written);
    }
  }
}
