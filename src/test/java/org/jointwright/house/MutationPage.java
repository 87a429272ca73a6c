package org.jointwright.house;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Makes the page of what {@code mvn -q -Pmutation} found: how many of the slips that were put into
 * rules and panels their tests notice, and which not.
 */
final class MutationPage {
  static final Path PAGE = Path.of("src/docs/MUTATION.md");
  private static final Path FOUND = Path.of("target", "mutation", "mutations.xml");
  private static final Path REMARKS = Path.of("src/test/resources/cases/mutation.properties");
  private static final String HEAD =
      """
      # Slips that tests notice

      Small slips are put into the classes of `check` and `joint` one at a time (a comparison turned round or made one less strict, a
      call left out, a result replaced; the default set of PIT), and the tests of these packages are run on each: a slip that no test
      notices shows what is not tested. Tests that compare whole plans with another program are left out, so a slip that only they
      notice counts as unnoticed here. Made by `mvn -q -Pmutation`; `-Dmutate="org.jointwright.joint.*"` names classes.

      """;

  /** One slip. */
  record Slip(String type, String method, int line, String what, String status) {
    boolean noticed() {
      return status.equals("KILLED") || status.equals("TIMED_OUT") || status.endsWith("ERROR");
    }

    boolean tested() {
      return !status.equals("NO_COVERAGE");
    }

    String place() {
      return type.substring(type.lastIndexOf('.') + 1) + "." + method;
    }
  }

  private MutationPage() {}

  public static void main(String[] args) throws IOException {
    Properties remarks = new Properties();
    try (Reader in = Files.newBufferedReader(REMARKS)) {
      remarks.load(in);
    }
    Files.writeString(PAGE, page(read(FOUND), remarks));
  }

  static List<Slip> read(Path file) throws IOException {
    NodeList all;
    try {
      all =
          DocumentBuilderFactory.newDefaultInstance()
              .newDocumentBuilder()
              .parse(file.toFile())
              .getElementsByTagName("mutation");
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException("no list of slips: " + file, e);
    }
    List<Slip> slips = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      slips.add(
          new Slip(
              text(e, "mutatedClass"),
              text(e, "mutatedMethod"),
              Integer.parseInt(text(e, "lineNumber")),
              text(e, "description"),
              e.getAttribute("status")));
    }
    return slips;
  }

  private static String text(Element e, String name) {
    return e.getElementsByTagName(name).item(0).getTextContent();
  }

  /**
   * The page.
   *
   * @param remarks why a slip at a place need not be noticed, by {@code Class.method}
   */
  static String page(List<Slip> slips, Properties remarks) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("| package | slips | noticed | share | in code that no test of these runs |\n");
    page.append("|---|---:|---:|---:|---:|\n");
    addRow(page, "all", slips);
    by(slips, s -> s.type().substring(0, s.type().lastIndexOf('.')))
        .forEach((name, own) -> addRow(page, name.substring("org.jointwright.".length()), own));
    page.append("\n## Not noticed\n\n| where | lines | slips | remark |\n|---|---|---:|---|\n");
    by(slips.stream().filter(s -> !s.noticed()).toList(), Slip::place)
        .forEach(
            (place, own) ->
                add(
                    page,
                    "| `%s` | %s | %d | %s |%n",
                    place,
                    own.stream()
                        .map(s -> String.valueOf(s.line()))
                        .distinct()
                        .collect(Collectors.joining(", ")),
                    own.size(),
                    remarks.getProperty(place, "")));
    return page.toString();
  }

  private static Map<String, List<Slip>> by(List<Slip> slips, Function<Slip, String> key) {
    return slips.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  private static void addRow(StringBuilder page, String name, List<Slip> slips) {
    long noticed = slips.stream().filter(Slip::noticed).count();
    add(
        page,
        "| %s | %d | %d | %.1f %% | %d |%n",
        name,
        slips.size(),
        noticed,
        100.0 * noticed / Math.max(1, slips.size()),
        slips.stream().filter(s -> !s.tested()).count());
  }

  private static void add(StringBuilder page, String format, Object... arguments) {
    page.append(String.format(Locale.ROOT, format, arguments));
  }
}
