package org.jointwright.file.json;

import java.util.Iterator;
import java.util.Locale;
import java.util.Map;

/**
 * Prints JSON for people: a value that fits in the line stands in one line, else each member or
 * item in a line of its own.
 */
public final class JsonPrinter {
  private static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder();

  private JsonPrinter() {}

  /** The value over as many lines as it needs, with a line feed at the end. */
  public static String pretty(Json value) {
    JsonPrinter printer = new JsonPrinter();
    printer.print(value, 0, 0);
    return printer.out.append('\n').toString();
  }

  /** The value in one line. */
  public static String flat(Json value) {
    JsonPrinter printer = new JsonPrinter();
    printer.flatten(value, Integer.MAX_VALUE);
    return printer.out.toString();
  }

  private void print(Json value, int indent, int after) {
    int start = out.length();
    int room = WIDTH - (start - (out.lastIndexOf("\n") + 1)) - after;
    // The document itself is always spread out: one line of it would be hard to look through.
    if (start > 0 && flatten(value, start + room)) {
      return;
    }
    out.setLength(start);
    switch (value) {
      case Json.Members m when !m.members().isEmpty() -> spread(m, indent);
      case Json.Items i when !i.items().isEmpty() -> spread(i, indent);
      case Json.Members m -> flatten(m, Integer.MAX_VALUE);
      case Json.Items i -> flatten(i, Integer.MAX_VALUE);
      case Json.Text t -> flatten(t, Integer.MAX_VALUE);
      case Json.Figure n -> flatten(n, Integer.MAX_VALUE);
      case Json.Flag f -> flatten(f, Integer.MAX_VALUE);
      case Json.Nothing n -> flatten(n, Integer.MAX_VALUE);
      case Json.Raw r -> flatten(r, Integer.MAX_VALUE);
    }
  }

  private void spread(Json.Members value, int indent) {
    out.append('{');
    Iterator<Map.Entry<String, Json>> it = value.members().entrySet().iterator();
    while (it.hasNext()) {
      Map.Entry<String, Json> member = it.next();
      newLine(indent + 2);
      quote(member.getKey());
      out.append(": ");
      print(member.getValue(), indent + 2, it.hasNext() ? 1 : 0);
      out.append(it.hasNext() ? "," : "");
    }
    newLine(indent);
    out.append('}');
  }

  private void spread(Json.Items value, int indent) {
    out.append('[');
    Iterator<Json> it = value.items().iterator();
    while (it.hasNext()) {
      newLine(indent + 2);
      print(it.next(), indent + 2, it.hasNext() ? 1 : 0);
      out.append(it.hasNext() ? "," : "");
    }
    newLine(indent);
    out.append(']');
  }

  private void newLine(int indent) {
    out.append('\n').repeat(' ', indent);
  }

  /** Appends the value in one line; gives up as soon as the text is longer than {@code most}. */
  private boolean flatten(Json value, int most) {
    switch (value) {
      case Json.Members m -> {
        String comma = "";
        out.append('{');
        for (Map.Entry<String, Json> e : m.members().entrySet()) {
          out.append(comma);
          quote(e.getKey());
          out.append(": ");
          if (!flatten(e.getValue(), most)) {
            return false;
          }
          comma = ", ";
        }
        out.append('}');
      }
      case Json.Items i -> {
        String comma = "";
        out.append('[');
        for (Json item : i.items()) {
          out.append(comma);
          if (!flatten(item, most)) {
            return false;
          }
          comma = ", ";
        }
        out.append(']');
      }
      case Json.Text t -> quote(t.value());
      case Json.Figure n -> out.append(n.text());
      case Json.Flag f -> out.append(f.value());
      case Json.Nothing n -> out.append("null");
      case Json.Raw r -> out.append(r.text());
    }
    return out.length() <= most;
  }

  private void quote(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\t' -> out.append("\\t");
        case '\r' -> out.append("\\r");
        default -> {
          // Half a surrogate pair cannot be written as UTF-8, and the last two signs of a plane not
          // in XML, which may hold a plan: they are escaped like a control sign.
          if (c < ' ' || c >= '\uFFFE' || (Character.isSurrogate(c) && !isPaired(text, i))) {
            out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  private static boolean isPaired(String text, int i) {
    char c = text.charAt(i);
    return Character.isHighSurrogate(c)
        ? i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))
        : i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
  }
}
