package org.jointwright.check.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jointwright.check.Case;
import org.jointwright.check.Check;
import org.jointwright.check.Severity;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nobody adds a rule without its source, its words, its doc and its four cases. */
class EveryRuleTest {
  private static final Path SOURCES = Path.of("src/main/java/org/jointwright/check");

  static Stream<Check> rules() {
    return Checks.ALL.stream();
  }

  @Test
  void theRulesDueAreThereOnceEach() {
    assertThat(Checks.ALL)
        .extracting(Check::rule)
        .containsExactly(
            "M1", "M2", "M3", "M4", "M5", "M6", "M7", "M8", "M9", "M10", "M11", "S1", "S2", "S3",
            "S4", "S5", "S6", "S7", "S8", "S9", "S10", "P1", "N1", "C1");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theRulesNameSaysHowMuchItWeighs(Check check) {
    Severity severity =
        switch (check.rule().charAt(0)) {
          case 'M' -> Severity.MUST;
          case 'S', 'P' -> Severity.SHOULD;
          default -> Severity.NOTE;
        };
    assertThat(check.severity()).isEqualTo(severity);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theRuleNamesItsSource(Check check) {
    assertThat(check.sources()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theRuleHasANameAndSaysWhatItAsks(Check check) {
    Words words = Words.english(UnitSystem.values()[0]);
    assertThat(words.say(check.nameKey())).isNotBlank();
    assertThat(words.say(check.aboutKey())).endsWith(".");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyMessageOfTheRuleIsInTheBundle(Check check) throws IOException {
    Words words = Words.english(UnitSystem.values()[0]);
    Set<String> keys = new TreeSet<>();
    String own = "check." + check.rule().toLowerCase(java.util.Locale.ROOT) + ".";
    Pattern key = Pattern.compile("\"(" + Pattern.quote(own) + "\\w+)\"");
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Matcher m = key.matcher(Files.readString(file));
        while (m.find()) {
          keys.add(m.group(1));
        }
      }
    }
    assertThat(keys).as("messages of " + check.rule()).isNotEmpty().allMatch(words::knows);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theRuleHasADocThatStartsWithItsName(Check check) throws IOException {
    String folder = check.getClass().getPackageName().replaceFirst(".*\\.", "");
    String source =
        Files.readString(
            SOURCES.resolve(folder).resolve(check.getClass().getSimpleName() + ".java"));
    String doc = source.substring(source.indexOf("/**"), source.indexOf("final class "));
    assertThat(doc).contains(" " + check.rule() + ", ");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theRuleHasItsFourCases(Check check) throws ClassNotFoundException {
    Set<Case.Kind> kinds = EnumSet.noneOf(Case.Kind.class);
    List<Method> tests = new ArrayList<>();
    for (Method m : Class.forName(check.getClass().getName() + "Test").getDeclaredMethods()) {
      Case kind = m.getAnnotation(Case.class);
      if (kind != null && m.isAnnotationPresent(Test.class)) {
        kinds.add(kind.value());
        tests.add(m);
      }
    }
    assertThat(kinds).isEqualTo(EnumSet.allOf(Case.Kind.class));
    assertThat(tests).hasSizeGreaterThanOrEqualTo(4);
  }
}
