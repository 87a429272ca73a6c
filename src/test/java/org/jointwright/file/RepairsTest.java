package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.plan.Against;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What reading mends, and says that it did. */
class RepairsTest {
  private static PlanReading.ReadPlan read(String slab) {
    String text =
        "{\"format\": \"jointwright-plan\", \"version\": 1, \"unit\": \"in\", \"slabs\": [" + slab;
    return (PlanReading.ReadPlan) PlanReader.read(text + "]}");
  }

  private static Slab only(Plan plan) {
    return plan.slabs().getFirst();
  }

  @Test
  void clockwiseRingIsTurnedAndItsEdgesKeepWhatTheyAreAgainst() {
    var read =
        read(
            """
            {"id": "a", "outline": [[0, 0], [0, 100], {"at": [200, 100], "via": [230, 50]}, [200, 0]],
             "edges": {"0": "building", "3": "street"}}
            """);
    Slab slab = only(read.plan());
    assertThat(read.repairs()).extracting(Remark::key).containsExactly("file.turned");
    assertThat(slab.outline().ring().signedArea()).isPositive();
    assertThat(slab.outline().vertices().getFirst().at()).isEqualTo(new Point(0, 0));
    // Edge 0 ran up the left side, which is now the last; edge 3 along the bottom is now the first.
    assertThat(slab.edge(3).against()).isEqualTo(Against.BUILDING);
    assertThat(slab.edge(0).against()).isEqualTo(Against.STREET);
    assertThat(slab.outline().vertices().get(1).via()).contains(new Point(230, 50));
    assertThat(slab.edges()).hasSize(2);
  }

  @Test
  void doubledVertexIsLeftOutAndLaterEdgesMoveUp() {
    var read =
        read(
            """
            {"id": "a", "outline": [[0, 0], [200, 0], [200, 0], [200, 100], [0, 100]],
             "edges": {"0": "street", "2": "open", "3": "building"}}
            """);
    Slab slab = only(read.plan());
    assertThat(read.repairs())
        .containsExactly(new Remark("slabs[0].outline[1]", 1, "file.doubled", List.of(2)));
    assertThat(slab.outline().vertices()).hasSize(4);
    assertThat(slab.edge(0).against()).isEqualTo(Against.STREET);
    assertThat(slab.edge(2).against()).isEqualTo(Against.BUILDING);
  }

  @Test
  void firstVertexRepeatedAtTheEndIsLeftOut() {
    var read =
        read("{\"id\": \"a\", \"outline\": [[0, 0], [200, 0], [200, 100], [0, 100], [0, 0]]}");
    assertThat(read.repairs()).extracting(Remark::key).containsExactly("file.firstRepeated");
    assertThat(only(read.plan()).outline().vertices()).hasSize(4);
  }

  @Test
  void whatHasNoNameIsGivenOne() {
    var read =
        read(
            """
            {"outline": [[0, 0], [200, 0], [200, 100]],
             "joints": [{"path": [[100, 0], [100, 50]]}, {"id": "J1", "path": [[50, 0], [50, 25]]}]}
            """);
    assertThat(only(read.plan()).id()).isEqualTo("slab-1");
    assertThat(only(read.plan()).joints()).extracting(j -> j.id()).containsExactly("J2", "J1");
  }

  private static PlanReading.ReadPlan beside(String second) {
    return read(
        "{\"id\": \"a\", \"outline\": [[0, 0], [200, 0], [200, 100], [0, 100]],"
            + " \"openings\": [[[20, 20], [80, 20], [80, 80], [20, 80]]]},"
            + " {\"id\": \"b\", \"outline\": "
            + second
            + "}");
  }

  @Test
  void slabInASlabIsSaidAndBothAreKept() {
    var read = beside("[[120, 20], [180, 20], [180, 80], [120, 80]]");
    assertThat(read.repairs())
        .containsExactly(new Remark("slabs[1].outline", 1, "file.slabsOverlap", List.of("b", "a")));
    assertThat(read.plan().slabs()).hasSize(2);
  }

  @Test
  void slabsThatCrossAreSaid() {
    assertThat(beside("[[90, -50], [110, -50], [110, 150], [90, 150]]").repairs())
        .extracting(Remark::key)
        .containsExactly("file.slabsOverlap");
  }

  @Test
  void slabsThatShareAnEdgeOrFillAnOpeningAreInOrder() {
    assertThat(beside("[[200, 0], [300, 0], [300, 100], [200, 100]]").repairs()).isEmpty();
    // Set out by two tapes: half an inch over.
    assertThat(beside("[[199.5, -20], [300, -20], [300, 60], [200.5, 60]]").repairs()).isEmpty();
    assertThat(beside("[[20, 20], [80, 20], [80, 80], [20, 80]]").repairs()).isEmpty();
  }

  @Test
  void planInOrderIsReadWithoutRepairs() {
    assertThat(read("{\"id\": \"a\", \"outline\": [[0, 0], [200, 0], [200, 100]]}").repairs())
        .isEmpty();
  }
}
