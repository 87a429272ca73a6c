package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jointwright.designer.sketch.Vocabulary.Meaning;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page that says what can be typed holds examples that are understood, and leaves none out. */
class TypingPageTest {
  /** Words that only help others along need no example. */
  private static final Set<Meaning> HELPERS = EnumSet.of(Meaning.DEGREES, Meaning.AND);

  private static final Pattern WORDS = Pattern.compile("[^\\p{L}]+");

  private static Words words(Language language) {
    return Words.of(language, UnitSystem.FEET_INCHES);
  }

  private static List<String> lines(Language language) {
    return words(language).say("window.notice.typing.lines").lines().toList();
  }

  private static Said read(Language language, String example) {
    return Sentence.read(example, new Vocabulary(words(language)), LengthUnit.FOOT);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void eachLineBeginsWithWhatIsUnderstood(Language language) {
    List<String> lines = lines(language);
    // The last one is about measures, and begins with none.
    assertThat(lines.subList(0, lines.size() - 1))
        .allSatisfy(
            l ->
                assertThat(read(language, l.substring(0, l.indexOf(':'))))
                    .as(l)
                    .isInstanceOfAny(Said.Side.class, Said.Close.class));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void eachWordThatMeansAWayIsOnIt(Language language) {
    Vocabulary vocabulary = new Vocabulary(words(language));
    Set<Meaning> said = EnumSet.copyOf(HELPERS);
    for (String line : lines(language)) {
      Arrays.stream(WORDS.split(line))
          .flatMap(w -> vocabulary.meaning(w).stream())
          .forEach(said::add);
    }
    assertThat(said).containsExactlyInAnyOrder(Meaning.values());
  }

  /** A slant or a turn, an arc and the end may come together; the page shows one of each. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void whatGoesTogetherIsShownTogether(Language language) {
    List<Said> all =
        lines(language).stream()
            .flatMap(l -> Arrays.stream(l.split("[:;.] ?", 0)))
            .map(String::strip)
            .filter(t -> !t.isEmpty())
            .map(t -> read(language, t))
            .toList();
    assertThat(all)
        .anyMatch(
            s ->
                s instanceof Said.Side x
                    && x.turn() instanceof Said.Turn.Slanted
                    && x.bulge().isPresent())
        .anyMatch(s -> s instanceof Said.Side x && x.turn() instanceof Said.Turn.Unsaid)
        .anyMatch(s -> s instanceof Said.Close c && c.bulge().isPresent());
  }
}
