package org.jointwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jointwright.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The Spanish words: all there, none too many, each thing called by its one name. */
class SpanishTest {
  private static final Path BUNDLES = Path.of("src/main/resources/org/jointwright/text");
  private static final Path GLOSSARY = Path.of("src/docs/GLOSSARY.md");
  private static final Locale SPANISH = Locale.of("es", "US");
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");

  private final Map<String, String> english = all(".properties", Locale.ENGLISH);
  private final Map<String, String> spanish = all("_es.properties", SPANISH);

  private static Map<String, String> all(String ending, Locale locale) {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.list(BUNDLES)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(ending) && (locale.equals(SPANISH) || !name.contains("_"))) {
          Properties words = new Properties();
          words.load(Files.newBufferedReader(file));
          words.stringPropertyNames().forEach(k -> found.put(k, words.getProperty(k)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static Set<String> places(String words) {
    Set<String> found = new TreeSet<>();
    PLACE.matcher(words).results().forEach(m -> found.add(m.group(1)));
    return found;
  }

  @Test
  void everyKeyHasSpanishWordsAndNoOtherHas() {
    assertThat(english).isNotEmpty();
    assertThat(spanish.keySet()).containsExactlyElementsOf(english.keySet());
  }

  @Test
  void bothLanguagesSayTheSameFigures() {
    english.forEach(
        (key, words) -> assertThat(places(spanish.get(key))).as(key).isEqualTo(places(words)));
  }

  @Test
  void spanishWordsAreSound() {
    spanish.forEach(
        (key, words) -> {
          assertThat(new MessageFormat(words, SPANISH).toPattern()).as(key).isNotNull();
          // A lone apostrophe would swallow what follows it.
          assertThat(words.replace("''", "").replaceAll("'[{}]+'", "")).as(key).doesNotContain("'");
        });
  }

  /** What a reader of Spanish in North America writes: a point before decimals. */
  @Test
  void figuresAreWrittenWithAPoint() {
    Words words = Words.of(SPANISH, UnitSystem.FEET_INCHES);
    assertThat(words.say("near.atMost", 1.25)).contains("1.2 %");
  }

  @Test
  void anArticleIsJoinedToTheWordBeforeIt() {
    Words words = Words.of(Language.SPANISH, UnitSystem.FEET_INCHES);
    assertThat(words.say("reason.even", 4, "el lado D–C", "el lado A–B", 1, "9′"))
        .contains("Del lado D–C al lado A–B");
    assertThat(words.say("reason.even", 4, "la junta 1", "El Encino", 1, "9′"))
        .contains("De la junta 1 a El Encino");
    assertThat(Words.english(UnitSystem.FEET_INCHES).say("reason.outsideCorner", "de el x"))
        .contains("de el x");
  }

  @Test
  void theGlossaryNamesWhatTheProgramSays() {
    String englishWords = String.join("\n", english.values()).toLowerCase(Locale.ENGLISH);
    String spanishWords = String.join("\n", spanish.values()).toLowerCase(SPANISH);
    List<String[]> rows = rows();
    assertThat(rows).hasSizeGreaterThanOrEqualTo(40);
    assertThat(rows.stream().map(r -> r[1])).doesNotHaveDuplicates();
    for (String[] row : rows) {
      assertThat(englishWords).contains(row[0]);
      assertThat(spanishWords).contains(row[1]);
    }
  }

  @Test
  void oneThingHasOneName() {
    List<String> wrong = new ArrayList<>();
    for (String[] row : rows()) {
      for (String not : row[2].split(", ", -1)) {
        Pattern word =
            Pattern.compile(
                "\\b" + Pattern.quote(not) + "(e?s)?\\b",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
        spanish.forEach(
            (key, words) -> {
              if (word.matcher(words).find()) {
                wrong.add(key + " says “" + not + "” for " + row[1]);
              }
            });
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static List<String[]> rows() {
    try {
      return Files.readAllLines(GLOSSARY, StandardCharsets.UTF_8).stream()
          .filter(l -> l.startsWith("| ") && !l.startsWith("| English"))
          .map(l -> Arrays.stream(l.split("\\|", -1)).skip(1).map(String::strip))
          .map(cells -> cells.toArray(String[]::new))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
