package org.jointwright.cases;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;

/**
 * Times the engine and makes the page of speed anew: {@code mvn -q -Pbench}. Told parts of names of
 * cases, it times these only and prints the page.
 */
final class SpeedTable {
  static final Path PAGE = Path.of("src/docs/SPEED.md");

  /** What was tried, kept by hand; the page ends with it. */
  private static final Path NOTES = Path.of("src/bench/notes.md");

  private static final int HOUSE = 40;
  static final String YARD = "yard-300-200";
  static final List<String> GROWING = List.of("yard-100", "yard-1000", "yard-10000");

  private SpeedTable() {}

  public static void main(String[] parts) throws IOException {
    List<OpenCase> houses = new ArrayList<>();
    List<OpenCase> larger = new ArrayList<>();
    for (OpenCase c : OpenCase.all()) {
      if (parts.length == 0 || c.isNamedBy(List.of(parts))) {
        (panels(Layouts.of(c.reference())) <= HOUSE ? houses : larger).add(c);
      }
    }
    if (houses.isEmpty()) {
      throw new IllegalArgumentException("no case of house size is named so");
    }
    List<String> small = houses.stream().map(OpenCase::name).toList();
    List<String> large = new ArrayList<>(larger.stream().map(OpenCase::name).toList());
    List<String> grown = new ArrayList<>(parts.length == 0 ? GROWING : List.of("yard-100"));
    grown.add(YARD);
    List<String> all = new ArrayList<>(small);
    all.addAll(large);
    Timed.warm("refit", small);
    Map<String, Timed> refit = Timed.often("refit", small);
    Map<String, Timed> bare = Timed.often("bare", small);
    large.addAll(grown);
    refit.putAll(Timed.often("refit", large));
    bare.putAll(Timed.often("bare", large));
    Map<String, Timed> first = Timed.some("first", all, 0, 1);
    first.putAll(Timed.some("first", grown, 0, 1));
    Map<String, Timed> full = Timed.some("full", all, 0, 1);
    full.putAll(Timed.some("full", grown, 1, 1));
    Map<String, Held> held = new LinkedHashMap<>();
    for (String of : large) {
      held.put(of, Held.of(of));
    }
    String page =
        new SpeedPage(small, large, refit, first, full, bare, held).text()
            + "\n"
            + Files.readString(NOTES);
    if (parts.length == 0) {
      Files.writeString(PAGE, page);
    }
    new PrintStream(System.out, true, StandardCharsets.UTF_8)
        .println(parts.length == 0 ? PAGE : page);
  }

  private static int panels(Layout layout) {
    return layout.slabs().stream().mapToInt(s -> s.panels().size()).sum();
  }

  /**
   * What a layout takes while it is kept.
   *
   * @param panels how many it has
   * @param bytes memory it takes, with its plan
   */
  record Held(int panels, double bytes) {
    static Held of(String of) {
      Layout one = Speed.first(of);
      int n = SpeedTable.panels(one);
      // As many as make the noise of the heap small beside them.
      int copies = Math.max(1, 20_000 / n);
      Object[] kept = new Object[copies];
      long before = used();
      for (int i = 0; i < copies; i++) {
        kept[i] = Layouts.of(one.plan().withJob(one.plan().job()));
      }
      long after = used();
      return new Held(n, (double) (after - before) / kept.length);
    }

    private static long used() {
      Runtime runtime = Runtime.getRuntime();
      for (int i = 0; i < 4; i++) {
        System.gc();
      }
      return runtime.totalMemory() - runtime.freeMemory();
    }
  }
}
