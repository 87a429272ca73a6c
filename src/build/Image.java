import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Makes an image of the program with a runtime of its own and a cache of its classes, tries it in a
 * root without a JDK where the system has the means, measures how soon its window is there, and
 * writes that down. The build runs it from source after packaging.
 */
final class Image {
  private static final String NAME = "jointwright";
  private static final String MAIN = "org.jointwright.Main";
  private static final String SAMPLE = "samples/drive-approach-walk.jointwright.json";
  private static final int RUNS = 11;

  /**
   * Asked for at run time, where no tool sees it: words in Spanish, and what JavaFX reaches for.
   */
  private static final List<String> HIDDEN_MODULES = List.of("jdk.localedata", "jdk.unsupported");

  private static final List<String> OPTIONS =
      List.of(
          "-XX:+UseSerialGC",
          "-Djava.awt.headless=true",
          "-Djointwright.fonts=$APPDIR/fonts",
          "--enable-native-access=ALL-UNNAMED");

  private static final Path CHROOT = Path.of("/usr/sbin/chroot");

  /** A font as the system might have one. */
  private static final Path FONT =
      Path.of("src/main/resources/org/jointwright/fonts/Lato-Regular.ttf");

  private static final String FONTS =
      """
      <?xml version="1.0"?>
      <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
      <fontconfig><dir>/usr/share/fonts</dir><cachedir>/tmp/fonts</cachedir></fontconfig>
      """;

  /** Loaded by name at run time. */
  private static final List<String> LOADED =
      List.of(
          "libgtk-3.so.0", "libXtst.so.6", "libXxf86vm.so.1", "libpangoft2-1.0.so.0", "libGL.so.1");

  /** The toolkit's own libraries, as its jars hold them. */
  private static final Pattern NATIVE = Pattern.compile("[^/]+\\.(so|dll|dylib)");

  private static final Pattern FONTS_PACKED = Pattern.compile("org/jointwright/(fonts/.+\\.ttf)");

  /**
   * A cache that does not fit is passed over without a word. The second compiler is kept from all
   * that a start alone makes seem hot, by profiles kept or by counts: on two processors it takes a
   * quarter of a second from the window. Long searches run hot enough for it soon after.
   */
  private static final List<String> WITH_CACHE =
      List.of(
          "-XX:AOTCache=$APPDIR/jointwright.aot",
          "-Xlog:disable",
          "-Xlog:all=error:stderr",
          "-XX:-UsePerfData",
          "-XX:+UnlockDiagnosticVMOptions",
          // Mapped where it was made, nothing in the cache is to be changed.
          "-XX:ArchiveRelocationMode=0",
          "-XX:-AOTReplayTraining",
          "-XX:Tier4InvocationThreshold=50000",
          "-XX:Tier4MinInvocationThreshold=6000",
          "-XX:Tier4CompileThreshold=150000",
          "-XX:Tier4BackEdgeThreshold=400000");

  private static final Path SHELL = Path.of("/bin/sh");

  /**
   * Starts the image on Linux. The launcher that jpackage makes asks two package keepers whose it
   * is, and does so twice, before it starts anything.
   */
  private static final Path SCRIPT = Path.of("src/build/image-start.sh");

  private final Path jdk = Path.of(System.getProperty("java.home"));
  private final Path dist;
  private final Path image;
  private final String version;
  private String display = "";

  private Image(Path target, String version) {
    dist = target.resolve("dist");
    image = target.resolve("image").resolve(NAME);
    this.version = version;
  }

  /** The folder of what was built, and the program's version. */
  public static void main(String[] args) throws Exception {
    Path target = Path.of(args[0]).toAbsolutePath();
    Image image = new Image(target, args[1]);
    image.make();
    Process screen = image.openScreen();
    try {
      image.learn();
      List<Integer> with = image.times("");
      List<Integer> without = image.times("-XX:AOTMode=off");
      String bare = image.inBareRoot(target.resolve("bare"));
      List<Integer> set = image.setTimes(target);
      image.write(Path.of("src/docs/START.md"), with, without, bare, set);
    } finally {
      if (screen != null) {
        screen.destroy();
      }
    }
  }

  /** A screen that nobody sees, on a Linux machine without one; none where there is one. */
  private Process openScreen() throws IOException {
    display = System.getenv().getOrDefault("DISPLAY", "");
    if (!isLinux() || !display.isBlank()) {
      return null;
    }
    Process screen =
        new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1920x1080x24")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    display = ":" + screen.inputReader().readLine();
    return screen;
  }

  private static boolean isLinux() {
    return System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
  }

  private static boolean isWindows() {
    return File.separatorChar == '\\';
  }

  private Path tool(String name) {
    return jdk.resolve("bin").resolve(isWindows() ? name + ".exe" : name);
  }

  private Path app() {
    Path mac = image.resolveSibling(NAME + ".app").resolve("Contents").resolve("app");
    return Files.exists(mac) ? mac : image.resolve(isWindows() ? "app" : "lib/app");
  }

  private Path launcher() {
    if (isWindows()) {
      return image.resolve(NAME + ".exe");
    }
    Path mac = image.resolveSibling(NAME + ".app").resolve("Contents/MacOS").resolve(NAME);
    return Files.exists(mac) ? mac : image.resolve("bin").resolve(NAME);
  }

  private Path java() throws IOException {
    Path root = app().getParent();
    try (Stream<Path> all = Files.walk(root)) {
      String name = isWindows() ? "java.exe" : "java";
      return all.filter(p -> p.endsWith(Path.of("bin", name))).findFirst().orElseThrow();
    }
  }

  private void make() throws Exception {
    delete(image.getParent());
    List<String> command = new ArrayList<>();
    command.addAll(List.of(tool("jpackage").toString(), "--type", "app-image", "--name", NAME));
    command.addAll(List.of("--app-version", version, "--dest", image.getParent().toString()));
    command.addAll(List.of("--input", dist.resolve("lib").toString()));
    command.addAll(List.of("--main-jar", NAME + "-" + version + ".jar", "--main-class", MAIN));
    command.addAll(List.of("--add-modules", String.join(",", modules())));
    // The runtime keeps its own java: it makes the cache.
    command.add("--jlink-options");
    command.add("--strip-debug --no-header-files --no-man-pages --include-locales=en,es");
    OPTIONS.forEach(o -> command.addAll(List.of("--java-options", o)));
    run(command);
    unpack(NATIVE, 0);
    unpack(FONTS_PACKED, 1);
  }

  /**
   * Lays files beside the jars: there the toolkit finds its libraries, which it unpacks at the
   * first start else, and the fonts, which are copied at each.
   *
   * @param path the group of {@code names} that is where the file lies
   */
  private void unpack(Pattern names, int path) throws IOException {
    for (String jar : jars()) {
      try (ZipFile zip = new ZipFile(jar)) {
        for (ZipEntry entry : zip.stream().toList()) {
          Matcher name = names.matcher(entry.getName());
          if (name.matches()) {
            Path to = app().resolve(name.group(path));
            Files.createDirectories(to.getParent());
            try (InputStream in = zip.getInputStream(entry)) {
              Files.copy(in, to, StandardCopyOption.REPLACE_EXISTING);
            }
          }
        }
      }
    }
  }

  /** What the jars need of the JDK. */
  private Set<String> modules() throws Exception {
    List<String> command = new ArrayList<>();
    command.addAll(List.of(tool("jdeps").toString(), "--print-module-deps"));
    command.addAll(List.of("--ignore-missing-deps", "--multi-release", "25"));
    command.addAll(List.of("-cp", dist.resolve("lib") + File.separator + "*"));
    command.addAll(jars());
    String said = run(command).strip();
    Set<String> modules = new TreeSet<>(HIDDEN_MODULES);
    modules.addAll(Arrays.asList(said.lines().toList().getLast().split(",")));
    return modules;
  }

  private List<String> jars() throws IOException {
    try (Stream<Path> all = Files.list(dist.resolve("lib"))) {
      return all.map(Path::toString).filter(n -> n.endsWith(".jar")).sorted().toList();
    }
  }

  /** Shows the window once on the sample, and keeps the classes that took. */
  private void learn() throws Exception {
    Path cfg = app().resolve(NAME + ".cfg");
    List<String> lines = new ArrayList<>(Files.readAllLines(cfg));
    List<String> command = new ArrayList<>(List.of(java().toString()));
    command.add("-XX:AOTCacheOutput=" + app().resolve(NAME + ".aot"));
    OPTIONS.forEach(o -> command.add(o.replace("$APPDIR", app().toString())));
    // The very class path of the launcher: with another the cache would not fit.
    List<String> path =
        lines.stream()
            .filter(l -> l.startsWith("app.classpath="))
            .map(l -> l.substring("app.classpath=".length()))
            .map(l -> l.replace("$APPDIR", app().toString()))
            .toList();
    command.addAll(List.of("-cp", String.join(File.pathSeparator, path), MAIN, "glimpse"));
    // Not the sheets as well: their classes would double the cache, and every start pays for it.
    command.add(SAMPLE);
    run(command);
    int at = lines.indexOf("[JavaOptions]") + 1;
    lines.addAll(at, WITH_CACHE.stream().map(o -> "java-options=" + o).toList());
    Files.write(cfg, lines);
    if (isLinux()) {
      List<String> options =
          lines.stream()
              .filter(l -> l.startsWith("java-options="))
              .map(l -> l.substring("java-options=".length()))
              .map(l -> '"' + l.replace("$APPDIR", "$app") + '"')
              .toList();
      List<String> jars = path.stream().map(p -> p.replace(app().toString(), "$app")).toList();
      String script =
          Files.readString(SCRIPT)
              .replace("OPTIONS", String.join(" ", options))
              .replace("PATH", String.join(File.pathSeparator, jars))
              .replace("MAIN", MAIN);
      // What it stands for may be run by all, and so may it.
      Files.writeString(launcher(), script);
    }
  }

  /** Milliseconds from the start of the launcher to the window on the screen. */
  private List<Integer> times(String option) throws Exception {
    List<Integer> times = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      times.add(time(List.of(launcher().toString(), "glimpse"), option));
    }
    return times.subList(1, RUNS);
  }

  /** Milliseconds that the start script takes for all sheets of the house job. */
  private List<Integer> setTimes(Path target) throws Exception {
    Path laid = target.resolve("learnt").resolve("laid.jointwright.json");
    String script = dist.resolve("bin").resolve(isWindows() ? NAME + ".bat" : NAME).toString();
    run(List.of(script, "joint", SAMPLE, "-o", laid.toString()));
    String folder = target.resolve("learnt").resolve("set").toString();
    List<String> print = List.of(script, "sheet", laid.toString(), "--for", "all", "-o", folder);
    List<Integer> times = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      run(print);
      times.add(Math.toIntExact((System.nanoTime() - start) / 1_000_000));
    }
    return times.subList(1, RUNS);
  }

  /** The first line comes once the window is painted. */
  private int time(List<String> command, String option) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().remove("JAVA_HOME");
    builder.environment().put("PATH", "/usr/bin:/bin");
    withScreen(builder);
    if (!option.isEmpty()) {
      builder.environment().put("JAVA_TOOL_OPTIONS", option);
    }
    long start = System.nanoTime();
    Process process = builder.start();
    try (BufferedReader out = process.inputReader()) {
      String line = out.readLine();
      long shown = System.nanoTime();
      if (line == null || process.waitFor() != 0) {
        throw new IOException(String.join(" ", command) + " ended without a window");
      }
      return Math.toIntExact((shown - start) / 1_000_000);
    }
  }

  private void withScreen(ProcessBuilder builder) {
    if (!display.isBlank()) {
      builder.environment().put("DISPLAY", display);
    }
  }

  /** The program where there is nothing but it and the libraries of the system's windows. */
  private String inBareRoot(Path root) throws Exception {
    if (!Files.isExecutable(CHROOT) || !"root".equals(System.getProperty("user.name"))) {
      return "It was not tried in a bare root: that takes chroot, and the right to use it.";
    }
    delete(root);
    Path inside = root.resolve("opt").resolve(NAME);
    copyTree(image, inside);
    Files.createDirectories(root.resolve("bin"));
    Files.copy(SHELL, root.resolve("bin/sh"));
    Set<Path> libraries = libraries();
    for (Path library : libraries) {
      Path to = root.resolve(library.toString().substring(1));
      Files.createDirectories(to.getParent());
      Files.copy(library, to, StandardCopyOption.REPLACE_EXISTING);
    }
    for (String folder : List.of("tmp", "root", "proc", "dev", "etc/fonts")) {
      Files.createDirectories(root.resolve(folder));
    }
    // Of all systems with windows none is without a font, and the toolkit relies on that.
    Path fonts = root.resolve("usr/share/fonts");
    Files.createDirectories(fonts);
    Files.copy(FONT, fonts.resolve(FONT.getFileName()));
    Files.writeString(root.resolve("etc/fonts/fonts.conf"), FONTS);
    // The launcher and the runtime ask the system about themselves; more of it is not there.
    run(List.of("mknod", "-m", "666", root.resolve("dev/null").toString(), "c", "1", "3"));
    run(List.of("mknod", "-m", "666", root.resolve("dev/urandom").toString(), "c", "1", "9"));
    run(List.of("mount", "-t", "proc", "proc", root.resolve("proc").toString()));
    try {
      String program = "/opt/" + NAME + "/bin/" + NAME;
      List<String> command = List.of(CHROOT.toString(), root.toString(), program, "glimpse");
      int first = time(command, "");
      int next = time(command, "");
      return ("It was tried in a root that held the image and %d libraries of the system, no JDK"
              + " and nothing else but a shell: the window came in %d ms, and in %d ms once more.")
          .formatted(libraries.size(), first, next);
    } finally {
      run(List.of("umount", root.resolve("proc").toString()));
      delete(root);
    }
  }

  /** What the runtime and the toolkit load of the system, by name or when they need it. */
  private Set<Path> libraries() throws Exception {
    Set<Path> libraries = new TreeSet<>(needed(java()));
    libraries.addAll(needed(SHELL));
    try (Stream<Path> all = Files.walk(image)) {
      for (Path p : all.filter(x -> x.toString().endsWith(".so")).toList()) {
        libraries.addAll(needed(p));
      }
    }
    String known = run(List.of("ldconfig", "-p"));
    for (String name : LOADED) {
      Matcher m = Pattern.compile(Pattern.quote(name) + " .*=> (/\\S+)").matcher(known);
      if (m.find()) {
        libraries.add(Path.of(m.group(1)));
        libraries.addAll(needed(Path.of(m.group(1))));
      }
    }
    libraries.removeIf(p -> p.startsWith(image));
    return libraries;
  }

  /** What the system's loader would load for a program or library. */
  private Set<Path> needed(Path file) throws Exception {
    Set<Path> found = new TreeSet<>();
    for (String line : run(List.of("ldd", file.toString())).lines().toList()) {
      Matcher m = Pattern.compile("(/[^ ]+) \\(0x").matcher(line);
      if (m.find() && Files.exists(Path.of(m.group(1)))) {
        found.add(Path.of(m.group(1)));
      }
    }
    return found;
  }

  private void write(
      Path page, List<Integer> with, List<Integer> without, String bare, List<Integer> set)
      throws IOException {
    long size;
    try (Stream<Path> all = Files.walk(image.getParent())) {
      size =
          all.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
              .mapToLong(p -> p.toFile().length())
              .sum();
    }
    String text =
        """
        # How soon the window is there, and the sheets

        `mvn -q -Pimage` makes an image of the program with a runtime of its own in `target/image`, and a cache of its classes
        as they stand once the window was shown (JEP 483, JEP 514). This page is written by it. Measured is from the start of the
        process to the window painted on the screen, %d times after a first one, on a machine of %d processors whose load was %.1f
        (over one for each processor, other programs took the time and the figures say little). The image takes
        %d MB.

        | | least | middle | most | ms |
        |---|---:|---:|---:|---|
        %s
        %s

        %s

        The other wait is for paper. The start script of the distribution (`target/dist/bin`) prints the whole set of a house job, a
        drive with its approach and walk that is laid already: owner's plan, cut sheet, form sheet and order sheet, as one PDF and
        each page as SVG and PNG. Measured is from the start of the process to its end, cold each time.

        | | least | middle | most | ms |
        |---|---:|---:|---:|---|
        %s
        """
            .formatted(
                RUNS - 1,
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                size / 1_000_000,
                row("with the cache", with),
                row("without", without),
                bare,
                row("all sheets of a house job", set));
    Files.writeString(page, text, StandardCharsets.UTF_8);
  }

  private static String row(String name, List<Integer> times) {
    List<Integer> sorted = times.stream().sorted().toList();
    int middle = sorted.get(sorted.size() / 2);
    return "| %s | %d | %d | %d | %s |"
        .formatted(name, sorted.getFirst(), middle, sorted.getLast(), times);
  }

  private String run(List<String> command) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    withScreen(builder);
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    // Of what is no program ldd says so by its code.
    if (process.waitFor() != 0 && !command.getFirst().equals("ldd")) {
      throw new IOException(String.join(" ", command) + ":\n" + said);
    }
    return said;
  }

  private static void copyTree(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path p : all.toList()) {
        Path target = to.resolve(from.relativize(p).toString());
        if (Files.isDirectory(p)) {
          Files.createDirectories(target);
        } else {
          // With its time: by it the cache knows the jars again.
          Files.copy(p, target, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
