package org.jointwright.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CitedTest {
  private static final List<Class<?>> HOLDERS =
      List.of(
          Angles.class,
          BoxOuts.class,
          Corners.class,
          Filler.class,
          JointDepth.class,
          JointWidth.class,
          PanelShape.class,
          Section.class,
          Spacing.class,
          Tolerance.class);

  @Test
  void aFigureThatWasReadNamesItsDocument() {
    assertThatThrownBy(() -> new Cited("", "", "", Flag.READ))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aFigureOfOurOwnNamesNoDocument() {
    assertThatThrownBy(() -> new Cited("CIP 6", "", "", Flag.OWN_CHOICE))
        .hasMessageContaining("CIP 6");
  }

  @Test
  void theReferenceLeavesOutWhatIsUnknown() {
    assertThat(Cited.read("UFGS 03300N", "", "3.8.3").reference()).isEqualTo("UFGS 03300N, 3.8.3");
    assertThat(Cited.practice().reference()).isEmpty();
  }

  @Test
  void everyPublicFigureIsALimitWithASource() throws IllegalAccessException {
    List<Field> figures =
        HOLDERS.stream()
            .flatMap(c -> Stream.of(c.getFields()))
            .filter(f -> Modifier.isStatic(f.getModifiers()) && f.getType() == Limit.class)
            .toList();
    assertThat(figures).hasSizeGreaterThan(35);
    for (Field f : figures) {
      assertThat(((Limit<?>) f.get(null)).sources()).as(f.getName()).isNotEmpty();
    }
  }
}
