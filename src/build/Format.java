import com.google.googlejavaformat.java.Main;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Hands every Java file under {@code src} to the formatter, after the options given. The build runs
 * it from source, so that the list of files needs no shell and is the same on every system.
 */
final class Format {
  private Format() {}

  /** Checks with {@code --dry-run --set-exit-if-changed}, formats with {@code --replace}. */
  public static void main(String[] options) throws IOException {
    List<String> arguments = new ArrayList<>(List.of(options));
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      files
          .map(Path::toString)
          .filter(name -> name.endsWith(".java"))
          .sorted()
          .forEach(arguments::add);
    }
    Main.main(arguments.toArray(String[]::new));
  }
}
