package org.jointwright.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.reason.words.ReasonWords;
import org.jointwright.shape.Edge;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of the reasons in every plan with a sound layout. */
class ReasonLawsTest {
  private static final Path LAID = Path.of("src/test/resources/cases/laid");

  /** Leaving out is slow on a great yard: so many joints of a slab are enough. */
  private static final int SOME = 8;

  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(LAID)) {
      return files
          .map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".json"))
          .sorted()
          .toList();
    }
  }

  private static Plan plan(String name) {
    return switch (PlanReader.read(LAID.resolve(name))) {
      case PlanReading.ReadPlan read -> read.plan();
      case PlanReading.Refused refused -> throw new IllegalStateException(name + " is refused");
    };
  }

  private static List<String> some(Slab slab) {
    int n = slab.joints().size();
    int step = Math.max(1, (n + SOME - 1) / SOME);
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < n; i += step) {
      ids.add(slab.joints().get(i).id());
    }
    return ids;
  }

  private static Joint joint(Slab slab, String id) {
    return slab.joints().stream().filter(j -> j.id().equals(id)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyJointHasAnOriginAndWhatIsClaimedToBreakBreaks(String name) {
    Plan plan = plan(name);
    Layout layout = Layouts.of(plan);
    List<Finding> before = Checks.judge(layout).findings();
    for (Slab slab : plan.slabs()) {
      for (Reason r : Reasons.of(plan, layout, slab.id(), some(slab))) {
        assertThat(r.origins()).as("%s %s", slab.id(), r.joint()).isNotEmpty();
        assertThat(r.without().joints()).containsExactly(r.joint());
        // The other way: a plan without the joint, judged whole.
        Plan bare =
            plan.withSlab(
                slab.id(),
                s ->
                    s.withLaid(
                        s.joints().stream().filter(j -> !j.id().equals(r.joint())).toList(),
                        s.boxOuts()));
        List<Finding> after = Checks.judge(Layouts.of(bare)).findings();
        for (Finding f : r.without().breaks()) {
          assertThat(count(after, f))
              .as("%s %s breaks %s", slab.id(), r.joint(), f)
              .isGreaterThan(count(before, f));
        }
      }
    }
  }

  private static long count(List<Finding> findings, Finding like) {
    return findings.stream()
        .filter(f -> f.slab().equals(like.slab()) && f.key().equals(like.key()))
        .filter(f -> Math.abs(f.measured() - like.measured()) < 0.02)
        .count();
  }

  /** Joints listed backwards and run backwards, outlines begun at their second corner. */
  private static Plan turned(Plan plan) {
    List<Slab> slabs = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      List<Vertex> vertices = new ArrayList<>(s.outline().vertices());
      vertices.add(vertices.removeFirst());
      Map<Integer, EdgeSetting> edges = new TreeMap<>();
      int n = vertices.size();
      s.edges().forEach((i, e) -> edges.put((i + n - 1) % n, e));
      List<Joint> joints =
          s.joints().reversed().stream()
              .map(
                  j ->
                      j.withPath(
                          new org.jointwright.shape.Path(
                              j.path().edges().reversed().stream().map(Edge::reversed).toList())))
              .toList();
      slabs.add(
          s.withOutline(new Outline(vertices)).withEdges(edges).withLaid(joints, s.boxOuts()));
    }
    return plan.withSlabs(slabs);
  }

  @ParameterizedTest
  @MethodSource("names")
  void neitherTheOrderOfJointsNorTheFirstCornerMatters(String name) {
    Plan plan = plan(name);
    Plan turned = turned(plan);
    for (Slab slab : plan.slabs()) {
      List<String> some = some(slab);
      Map<String, List<String>> one = said(plan, slab.id(), some);
      assertThat(said(turned, slab.id(), some)).isEqualTo(one);
    }
  }

  private static Map<String, List<String>> said(Plan plan, String slab, List<String> joints) {
    ReasonWords words = ReasonWords.byNumber(plan, Words.english(UnitSystem.of(plan.unit())));
    Map<String, List<String>> said = new TreeMap<>();
    for (Reason r : Reasons.of(plan, Layouts.of(plan), slab, joints)) {
      List<String> lines = new ArrayList<>(words.origins(r));
      lines.sort(null);
      lines.addAll(words.without(r));
      words.rule(r).ifPresent(lines::add);
      assertThat(lines).allSatisfy(l -> assertThat(l).isNotBlank().doesNotContain("{"));
      said.put(r.joint(), lines);
    }
    return said;
  }

  @ParameterizedTest
  @MethodSource("names")
  void fillerIsThereForWhatItFills(String name) {
    Plan plan = plan(name);
    Layout layout = Layouts.of(plan);
    for (Slab slab : plan.slabs()) {
      for (Reason r : Reasons.of(plan, layout, slab.id(), some(slab))) {
        boolean isFiller = joint(slab, r.joint()).kind() == JointKind.ISOLATION;
        boolean saysSo =
            r.origins().stream()
                .anyMatch(o -> o instanceof Origin.AlongEdge || o instanceof Origin.RoundObject);
        assertThat(saysSo).as("%s %s", slab.id(), r.joint()).isEqualTo(isFiller);
      }
    }
  }
}
