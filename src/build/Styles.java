import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.css.Stylesheet;

/**
 * Writes each style sheet in a folder once more as the toolkit reads it soonest. The toolkit looks
 * for such a file beside the sheet, and reads the sheet itself where there is none or it is of
 * another release. The build runs it from source after the resources were copied.
 */
final class Styles {
  private Styles() {}

  /** The folder of what was built. */
  public static void main(String[] args) throws IOException {
    List<Path> sheets;
    try (Stream<Path> all = Files.walk(Path.of(args[0]))) {
      sheets = all.filter(f -> f.toString().endsWith(".css")).toList();
    }
    for (Path sheet : sheets) {
      String name = sheet.getFileName().toString();
      Path binary = sheet.resolveSibling(name.substring(0, name.length() - 4) + ".bss");
      Stylesheet.convertToBinary(sheet.toFile(), binary.toFile());
    }
  }
}
