package org.jointwright.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.sheet.svg.SvgPage;

/**
 * Compares a page’s SVG as a browser shows it with its PDF as a PDF renderer paints it. The browser
 * takes a second to start, so it shows several pages at once.
 */
public final class TwoRenderers {
  private static final int DOTS_PER_INCH = 150;
  private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;

  /** A browser counts 96 dots an inch. */
  private static final double BROWSER = 96;

  /** So many of the browser’s dots are whole dots of the picture: 16 by 150/96 is 25. */
  private static final int WHOLE = 16;

  private static final int REACH = 2;
  private static final int DARK = 100;
  private static final int INK = 170;

  private final Path folder;

  /**
   * Two renderers.
   *
   * @param folder where the browser may leave its files
   */
  public TwoRenderers(Path folder) {
    this.folder = folder;
  }

  /** What this machine lacks to compare them, if anything. */
  public Optional<String> missing() throws IOException, InterruptedException {
    if (!says(List.of("fc-list", ":family=Lato", "family")).contains("Lato")) {
      return Optional.of("the typeface Lato is not installed: apt-get install fonts-lato");
    }
    return says(List.of("chromium", "--version")).isEmpty()
        ? Optional.of("chromium is not installed: apt-get install chromium")
        : Optional.empty();
  }

  /**
   * Where the two differ, for each page: the first ten dark dots of either that are farther than
   * two dots from ink of the other.
   *
   * @throws IOException if the browser took no picture
   */
  public List<List<String>> differences(List<Page> pages) throws IOException, InterruptedException {
    BufferedImage browser = browser(pages);
    List<List<String>> all = new ArrayList<>();
    int top = 0;
    for (Page page : pages) {
      BufferedImage printed = printed(page);
      BufferedImage shown = browser.getSubimage(0, top, printed.getWidth(), printed.getHeight());
      List<String> differences = new ArrayList<>();
      strays(grey(shown), grey(printed)).forEach(s -> differences.add("the browser only: " + s));
      strays(grey(printed), grey(shown)).forEach(s -> differences.add("the printer only: " + s));
      all.add(differences);
      top += height(page) * DOTS_PER_INCH / (int) BROWSER;
    }
    return all;
  }

  private static BufferedImage printed(Page page) throws IOException {
    SheetSet alone = new SheetSet("", Locale.ENGLISH, Optional.empty(), List.of(), List.of(page));
    byte[] png = PdfSheet.picture(PdfSheet.bytes(alone), 0, DOTS_PER_INCH);
    return onWhite(ImageIO.read(new ByteArrayInputStream(png)));
  }

  /**
   * How much of the browser’s height a page is given: a little more than it needs, in whole dots.
   */
  private static int height(Page page) {
    double dots = page.paper().height() * BROWSER / 25.4;
    return ((int) Math.ceil(dots / WHOLE) + 1) * WHOLE;
  }

  private static int width(Page page) {
    return (int) Math.ceil(page.paper().width() * BROWSER / 25.4) + 2;
  }

  private static List<String> strays(int[][] one, int[][] other) {
    List<String> strays = new ArrayList<>();
    for (int y = REACH; y < one.length - REACH; y++) {
      for (int x = REACH; x < one[y].length - REACH; x++) {
        if (one[y][x] < DARK && !hasInkNear(other, x, y) && strays.size() < 10) {
          strays.add(String.format(Locale.ROOT, "%.1f, %.1f mm", x / DOTS_PER_MM, y / DOTS_PER_MM));
        }
      }
    }
    return strays;
  }

  private static boolean hasInkNear(int[][] grey, int x, int y) {
    for (int dy = -REACH; dy <= REACH; dy++) {
      for (int dx = -REACH; dx <= REACH; dx++) {
        if (grey[y + dy][x + dx] < INK) {
          return true;
        }
      }
    }
    return false;
  }

  private static int[][] grey(BufferedImage image) {
    int width = image.getWidth();
    int[] rgb = image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
    int[][] grey = new int[image.getHeight()][width];
    for (int i = 0; i < rgb.length; i++) {
      grey[i / width][i % width] =
          ((rgb[i] >> 16 & 0xff) * 3 + (rgb[i] >> 8 & 0xff) * 6 + (rgb[i] & 0xff)) / 10;
    }
    return grey;
  }

  private BufferedImage browser(List<Page> pages) throws IOException, InterruptedException {
    StringBuilder shown = new StringBuilder("<body style='margin:0'>");
    int top = 0;
    int wide = 0;
    for (int i = 0; i < pages.size(); i++) {
      String name = "page-" + i + ".svg";
      Files.write(folder.resolve(name), SvgPage.bytes(pages.get(i)));
      shown.append(
          "<img src='%s' style='position:absolute; left:0; top:%dpx'>".formatted(name, top));
      top += height(pages.get(i));
      wide = Math.max(wide, width(pages.get(i)));
    }
    Path all = folder.resolve("pages.html");
    Path png = folder.resolve("pages.png");
    Files.writeString(all, shown);
    Files.deleteIfExists(png);
    says(
        List.of(
            "chromium",
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--hide-scrollbars",
            "--user-data-dir=" + folder.resolve("profile"),
            "--force-device-scale-factor=" + DOTS_PER_INCH / BROWSER,
            "--window-size=" + wide + "," + top,
            "--screenshot=" + png,
            all.toUri().toString()));
    if (!Files.exists(png)) {
      throw new IOException("Chromium took no picture");
    }
    return onWhite(ImageIO.read(png.toFile()));
  }

  private static BufferedImage onWhite(BufferedImage picture) {
    BufferedImage white =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = white.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, white.getWidth(), white.getHeight());
    pen.drawImage(picture, 0, 0, null);
    pen.dispose();
    return white;
  }

  /** What a program says, nothing where there is none. */
  private String says(List<String> command) throws IOException, InterruptedException {
    Path said = folder.resolve("said");
    Process process;
    try {
      process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
    } catch (IOException notInstalled) {
      return "";
    }
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException(command.getFirst() + " gave no answer");
    }
    return Files.readString(said, StandardCharsets.UTF_8);
  }
}
