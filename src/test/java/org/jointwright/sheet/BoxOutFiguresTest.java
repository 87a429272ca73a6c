package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.place.Quad;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a crew is told of a box-out and of what stands in it. */
class BoxOutFiguresTest {
  /**
   * A drain 400 mm square, its middle 1.90 m from one side and 2.60 m from the next, and a post.
   */
  private static final String DRIVE = "drive-drain-and-walk.jointwright";

  /** Half a line, millimetres: one without any width meets nothing. */
  private static final double THIN = 0.1;

  private static List<Page> pages(Kind kind, Language language, UnitSystem units) {
    return LaidPlans.pages(DRIVE, kind, Words.of(language, units), Paper.LETTER);
  }

  private static String texts(Kind kind, Language language, UnitSystem units) {
    return pages(kind, language, units).stream()
        .flatMap(p -> PageTexts.of(p).stream())
        .map(t -> t.replace('\u00a0', ' '))
        .collect(Collectors.joining(" | "));
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"CUT", "FORMS"})
  void theMiddleOfADrainIsToldFromTwoSides(Kind kind) {
    assertThat(texts(kind, Language.ENGLISH, UnitSystem.METRIC))
        .contains("drain 400 mm × 400 mm | center, square from | A–E | 1.900 m | A–B | 2.600 m")
        .contains("post 150 mm diameter | center, square from | L–K | 600 mm | C–D | 600 mm");
    assertThat(texts(kind, Language.ENGLISH, UnitSystem.FEET_INCHES))
        .contains("drain 1′-3¾″ × 1′-3¾″ | center, square from | A–E | 6′-2¾″ | A–B | 8′-6⅜″");
    assertThat(texts(kind, Language.SPANISH, UnitSystem.METRIC))
        .contains(
            "coladera | 400 mm × 400 mm | centro, a escuadra de | A–E | 1.900 m | A–B | 2.600 m");
  }

  @Test
  void itsCornersAreAllToldFromOneSide() {
    assertThat(texts(Kind.CUT, Language.ENGLISH, UnitSystem.METRIC))
        .contains("from A toward E | right | 2.865 m | 1.700 m | 2.305 m | 1.700 m | ")
        .contains("from L toward K | right | 440 mm | 0 mm | 440 mm | 675 mm | ");
  }

  /** 4 in are 101.6 mm, and a quarter of that is 25.4 mm, which 25 mm would fall short of. */
  @Test
  void cutsAreAsDeepOnTheOrderAsOnTheCutSheet() {
    assertThat(texts(Kind.CUT, Language.ENGLISH, UnitSystem.METRIC)).contains("saw 26 mm deep");
    assertThat(texts(Kind.ORDER, Language.ENGLISH, UnitSystem.METRIC))
        .contains("Joints to saw, 26 mm deep", "Joints to saw, 30 mm deep")
        .doesNotContain("25 mm");
    assertThat(texts(Kind.ORDER, Language.ENGLISH, UnitSystem.FEET_INCHES))
        .contains("Joints to saw, 1″ deep", "Joints to saw, 1³⁄₁₆″ deep");
  }

  @Test
  void metricStakesAndSheetsAreToldAsTheyAreSetAndSold() {
    assertThat(texts(Kind.FORMS, Language.ENGLISH, UnitSystem.METRIC))
        .contains("at most 900 mm apart, 600 mm");
    assertThat(texts(Kind.FORMS, Language.ENGLISH, UnitSystem.FEET_INCHES))
        .contains("at most 3′-0″ apart, 2′-0″");
    assertThat(texts(Kind.ORDER, Language.ENGLISH, UnitSystem.METRIC).replace(" | ", " "))
        .contains("Wire sheets 1.52 m × 3.05 m");
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void noNumberOfAJointStandsOnABoxOut(Language language) {
    for (UnitSystem units : UnitSystem.values()) {
      Stream.of(Kind.CUT, Kind.FORMS)
          .flatMap(k -> pages(k, language, units).stream())
          .forEach(BoxOutFiguresTest::noNumberStandsOnFiller);
    }
  }

  private static void noNumberStandsOnFiller(Page page) {
    List<Mark.Line> fillers = lines(page.marks(), Role.FILLER_LINE).toList();
    for (int number = 1; number <= 10; number++) {
      String name = "number-" + number;
      groups(page.marks())
          .filter(g -> g.name().equals(name))
          .flatMap(g -> lines(g.marks(), null))
          .map(l -> new Ring(l.path().edges()).box())
          .map(b -> Quad.box(b.minX(), b.minY(), b.maxX(), b.maxY()))
          .forEach(
              tag ->
                  assertThat(fillers)
                      .as(name)
                      .noneMatch(l -> l.path().edges().stream().anyMatch(e -> crosses(e, tag))));
    }
  }

  private static boolean crosses(Edge e, Quad tag) {
    return Quad.line(e.start(), e.at(0.5), THIN).meets(tag)
        || Quad.line(e.at(0.5), e.end(), THIN).meets(tag);
  }

  private static Stream<Mark.Group> groups(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m ->
                m instanceof Mark.Group g
                    ? Stream.concat(Stream.of(g), groups(g.marks()))
                    : Stream.empty());
  }

  /** The lines of a role, or all, the borders of numbers left out. */
  private static Stream<Mark.Line> lines(List<Mark> marks, @Nullable Role role) {
    return marks.stream()
        .flatMap(
            m ->
                switch (m) {
                  case Mark.Line l when role == null || l.role() == role -> Stream.of(l);
                  case Mark.Group g when !g.name().startsWith("number-") -> lines(g.marks(), role);
                  default -> Stream.empty();
                });
  }
}
