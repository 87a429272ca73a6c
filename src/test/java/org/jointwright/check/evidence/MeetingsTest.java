package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class MeetingsTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 200);
  }

  private static List<String> of(Sketch sketch) {
    return Evidence.of(sketch).meetings().stream()
        .map(m -> m.joint() + (m.isY() ? " Y" : " tee"))
        .toList();
  }

  @Test
  void meetingsComeFromTheLeft() {
    Sketch two =
        slab()
            .joint(100, 0, 100, 200)
            .joint(50, 0, 50, 200)
            .joint(100, 40, 200, 40)
            .joint(0, 160, 50, 160);
    assertThat(Evidence.of(two).meetings())
        .extracting(Meetings.Meeting::at)
        .containsExactly(new Point(50, 160), new Point(100, 40));
    assertThat(of(two)).containsExactly("J4 tee", "J3 tee");
  }

  @Test
  void aBentJointRunsOnRoundItsBend() {
    Sketch bent = slab().joint(0, 50, 100, 50, 200, 120).joint(100, 50, 100, 0);
    assertThat(of(bent)).containsExactly("J2 tee");
    Sketch two = slab().joint(0, 50, 100, 50).joint(100, 50, 200, 120).joint(100, 50, 100, 0);
    assertThat(of(two)).singleElement().asString().endsWith("Y");
  }

  @Test
  void aSharpBendRunsOnNowhere() {
    // The bend turns by more than a right angle: its joint comes back.
    Sketch hook = slab().joint(0, 50, 100, 50, 40, 120).joint(100, 50, 200, 40);
    assertThat(of(hook)).noneMatch(m -> m.startsWith("J2"));
  }

  @Test
  void whereFillerOrTheEdgeMeetsThereIsNone() {
    assertThat(of(slab().filler(100, 0, 100, 200).joint(0, 100, 100, 100))).isEmpty();
    assertThat(of(slab().joint(JointKind.CONSTRUCTION, 100, 0, 100, 200).joint(0, 100, 100, 100)))
        .isEmpty();
    assertThat(of(slab().joint(100, 0, 100, 200).joint(0, 100, 100, 100))).hasSize(1);
  }

  @Test
  void fourThatMeetAreACrossAndTwoOnOneSideAreTwoTees() {
    assertThat(of(slab().joint(100, 0, 100, 200).joint(0, 100, 200, 100))).isEmpty();
    Sketch oneSide = slab().joint(100, 0, 100, 200).joint(0, 60, 100, 100).joint(0, 140, 100, 100);
    assertThat(of(oneSide)).containsExactlyInAnyOrder("J2 tee", "J3 tee");
    Sketch either = slab().joint(100, 0, 100, 200).joint(0, 60, 100, 100).joint(200, 100, 100, 100);
    assertThat(of(either)).isEmpty();
  }
}
