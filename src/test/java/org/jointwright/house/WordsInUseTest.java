package org.jointwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every key that the program says has words, and every word is said. */
class WordsInUseTest {
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
  private static final Pattern KEY = Pattern.compile("[a-z]+(\\.[A-Za-z0-9_-]+)+");
  private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'('')*(?!')");

  /** How a brace is written that opens no place for an argument. */
  private static final String QUOTED_BRACES = "'[{}]+'";

  /** Endings that make a literal the name of a file or a resource rather than a key. */
  private static final Pattern FILE_NAME =
      Pattern.compile(".*\\.(json|properties|css|svg|pdf|png|ttf|xml|csv|wkt|txt)");

  private final Map<String, String> english = new TreeMap<>();
  private final List<String> twice = new ArrayList<>();
  private final Set<String> areas = new HashSet<>();
  private final Set<String> literals = new TreeSet<>();

  WordsInUseTest() {
    for (Path bundle : House.files(House.WORDS, ".properties")) {
      String area = bundle.getFileName().toString().replace(".properties", "");
      if (!area.contains("_")) {
        areas.add(area);
        read(bundle, english, twice);
      }
    }
    for (Path file : House.files(House.MAIN, ".java")) {
      for (String line : House.lines(file)) {
        String code = line.strip();
        if (!code.startsWith("*") && !code.startsWith("//") && !code.startsWith("/**")) {
          LITERAL.matcher(line).results().forEach(m -> literals.add(m.group(1)));
        }
      }
    }
  }

  @Test
  void everyKeyThatIsSaidHasWords() {
    List<String> missing = new ArrayList<>();
    for (String literal : literals) {
      if (KEY.matcher(literal).matches()
          && areas.contains(literal.substring(0, literal.indexOf('.')))
          && !FILE_NAME.matcher(literal).matches()
          && !english.containsKey(literal)
          && english.keySet().stream().noneMatch(k -> k.startsWith(literal + "."))) {
        missing.add(literal);
      }
    }
    assertThat(missing).as("keys without words").isEmpty();
  }

  @Test
  void everyWordIsSaid() {
    List<String> unused = english.keySet().stream().filter(k -> !isSaid(k)).toList();
    assertThat(unused).as("words that no code says").isEmpty();
  }

  /** Said whole, or built from a literal that begins it up to a full stop. */
  private boolean isSaid(String key) {
    if (literals.contains(key)) {
      return true;
    }
    for (int dot = key.lastIndexOf('.'); dot > 0; dot = key.lastIndexOf('.', dot - 1)) {
      if (literals.contains(key.substring(0, dot + 1))
          || literals.contains(key.substring(0, dot))) {
        return true;
      }
    }
    return false;
  }

  /** Who measures in metres is not told to type feet. */
  @Test
  void everyExampleInFeetIsSaidInMetresToo() {
    Pattern feet = Pattern.compile("\\d′");
    List<String> only =
        english.keySet().stream()
            .filter(k -> feet.matcher(english.get(k)).find())
            .filter(k -> !k.endsWith(".inMetres"))
            .filter(k -> !english.containsKey(k + ".inMetres"))
            .toList();
    assertThat(only).isEmpty();
  }

  @Test
  void noKeyHasWordsTwice() {
    assertThat(twice).isEmpty();
  }

  @Test
  void everyKeyBelongsToItsBundle() {
    for (Path bundle : House.files(House.WORDS, ".properties")) {
      String area = bundle.getFileName().toString().replaceAll("(_.*)?\\.properties", "");
      Map<String, String> here = new TreeMap<>();
      read(bundle, here, new ArrayList<>());
      assertThat(here.keySet()).as(bundle.toString()).allMatch(k -> k.startsWith(area + "."));
    }
  }

  @Test
  void everyApostropheIsWrittenTwiceAndEveryPlaceIsClosed() {
    List<String> wrong = new ArrayList<>();
    english.forEach(
        (key, words) -> {
          if (LONE_APOSTROPHE.matcher(words.replaceAll(QUOTED_BRACES, "")).find()) {
            wrong.add(key + ": a lone apostrophe; write ’ or '' in " + words);
          }
          try {
            MessageFormat parsed = new MessageFormat(words, Locale.ENGLISH);
            assertThat(parsed.toPattern()).isNotNull();
          } catch (IllegalArgumentException e) {
            wrong.add(key + ": " + e.getMessage());
          }
        });
    assertThat(wrong).isEmpty();
  }

  private static void read(Path bundle, Map<String, String> into, List<String> twice) {
    Pattern entry = Pattern.compile("^\\s*([^#!\\s=:][^=:\\s]*)\\s*[=:\\s]\\s*(.*)$");
    boolean isContinued = false;
    for (String line : House.lines(bundle)) {
      Matcher m = entry.matcher(line);
      if (!isContinued && m.matches() && into.put(m.group(1), m.group(2)) != null) {
        twice.add(bundle.getFileName() + ": " + m.group(1));
      }
      isContinued = line.endsWith("\\");
    }
  }
}
