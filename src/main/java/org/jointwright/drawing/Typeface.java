package org.jointwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * The widths of the glyphs of a font, read from its TrueType tables (OpenType specification 1.9:
 * head, hhea, hmtx, cmap format 4), so that texts can be placed without a graphics toolkit. Kerning
 * is left out, and left out where the texts are painted.
 */
public final class Typeface {
  /** The height of a capital as a share of the size: Lato 2.0, table OS/2, sCapHeight 1433/2000. */
  public static final double CAPITAL = 0.7165;

  private static final Map<Weight, Typeface> LOADED = new HashMap<>();

  private final ByteBuffer font;
  private final int unitsPerEm;
  private final int widths;
  private final int widthCount;
  private final int codes;

  private Typeface(ByteBuffer font) {
    this.font = font;
    unitsPerEm = Short.toUnsignedInt(font.getShort(table("head") + 18));
    widths = table("hmtx");
    widthCount = Short.toUnsignedInt(font.getShort(table("hhea") + 34));
    codes = unicodeTable();
  }

  /** The face of that weight. */
  public static synchronized Typeface of(Weight weight) {
    return LOADED.computeIfAbsent(weight, Typeface::load);
  }

  private static Typeface load(Weight weight) {
    try (InputStream in = Typeface.class.getResourceAsStream(weight.resource())) {
      if (in == null) {
        throw new IllegalStateException("the font is missing: " + weight.resource());
      }
      return new Typeface(ByteBuffer.wrap(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The width of {@code text} at {@code size}, in the unit of the size. */
  public double width(String text, double size) {
    return size * text.codePoints().map(this::advance).sum() / unitsPerEm;
  }

  /** Whether the font has a glyph for the character. */
  public boolean has(int codePoint) {
    return glyph(codePoint) != 0;
  }

  private int advance(int codePoint) {
    int g = Math.min(glyph(codePoint), widthCount - 1);
    return Short.toUnsignedInt(font.getShort(widths + 4 * g));
  }

  private int table(String tag) {
    byte[] wanted = tag.getBytes(StandardCharsets.US_ASCII);
    int n = font.getShort(4);
    for (int i = 0; i < n; i++) {
      int at = 12 + 16 * i;
      if (ByteBuffer.wrap(wanted).getInt() == font.getInt(at)) {
        return font.getInt(at + 8);
      }
    }
    throw new IllegalStateException("the font has no table " + tag);
  }

  private int unicodeTable() {
    int cmap = table("cmap");
    int n = font.getShort(cmap + 2);
    for (int i = 0; i < n; i++) {
      int at = cmap + 4 + 8 * i;
      int sub = cmap + font.getInt(at + 4);
      if (font.getShort(at) == 3 && font.getShort(at + 2) == 1 && font.getShort(sub) == 4) {
        return sub;
      }
    }
    throw new IllegalStateException("the font has no table of Unicode characters in format 4");
  }

  private int glyph(int codePoint) {
    int twiceCount = Short.toUnsignedInt(font.getShort(codes + 6));
    int ends = codes + 14;
    for (int i = 0; i < twiceCount && codePoint <= 0xFFFF; i += 2) {
      if (Short.toUnsignedInt(font.getShort(ends + i)) < codePoint) {
        continue;
      }
      int start = Short.toUnsignedInt(font.getShort(ends + twiceCount + 2 + i));
      int delta = font.getShort(ends + 2 * twiceCount + 2 + i);
      int rangeAt = ends + 3 * twiceCount + 2 + i;
      int range = Short.toUnsignedInt(font.getShort(rangeAt));
      if (start > codePoint) {
        return 0;
      }
      if (range == 0) {
        return (codePoint + delta) & 0xFFFF;
      }
      int g = Short.toUnsignedInt(font.getShort(rangeAt + range + 2 * (codePoint - start)));
      return g == 0 ? 0 : (g + delta) & 0xFFFF;
    }
    return 0;
  }
}
