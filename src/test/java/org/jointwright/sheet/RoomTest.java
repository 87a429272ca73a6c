package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of a sheet touches another or is struck through, and all stay on the paper. */
class RoomTest {
  /** More joints than this make a sheet that takes seconds: such plans are left to the whole. */
  private static final int MANY = 60;

  private static final int SELECTED = 70;
  private static final long SEED = 20_261_127;

  /**
   * Samples and crowded plans on letter paper in English feet and on A4 in Spanish metres, and of
   * everything else a selection that is the same each time. {@code mvn -Psheets} looks at all.
   */
  static List<MadeSheet> sheets() {
    List<MadeSheet> all = new ArrayList<>();
    LaidPlans.samples().forEach(n -> all.addAll(MadeSheet.usual(n)));
    LaidPlans.crowded().forEach(n -> all.addAll(MadeSheet.usual(n)));
    List<MadeSheet> others =
        new ArrayList<>(
            LaidPlans.names().stream()
                .filter(RoomTest::isSmall)
                .flatMap(n -> MadeSheet.whole(n).stream())
                .toList());
    Collections.shuffle(others, new Random(SEED));
    all.addAll(others.subList(0, SELECTED));
    return all.stream().distinct().toList();
  }

  private static boolean isSmall(String name) {
    return LaidPlans.plan(name).slabs().stream().mapToInt(s -> s.joints().size()).sum() <= MANY;
  }

  private static List<Room> rooms(MadeSheet s) {
    return LaidPlans.pages(s.name(), s.kind(), s.words(), s.paper()).stream()
        .map(Room::of)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void noTextTouchesAnother(MadeSheet sheet) {
    assertThat(rooms(sheet).stream().flatMap(r -> r.touching().stream())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void noLineRunsThroughAText(MadeSheet sheet) {
    assertThat(rooms(sheet).stream().flatMap(r -> r.struck().stream())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyTextStaysInsideTheMargins(MadeSheet sheet) {
    assertThat(rooms(sheet).stream().flatMap(r -> r.outside().stream())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void noLetteringIsSmallerThanThreeMillimetres(MadeSheet sheet) {
    assertThat(rooms(sheet).stream().flatMap(r -> r.small().stream())).isEmpty();
  }
}
