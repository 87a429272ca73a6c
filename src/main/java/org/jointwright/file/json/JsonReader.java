package org.jointwright.file.json;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/** Reads one JSON value from a text, strictly: no key twice, no NaN, nothing after it. */
public final class JsonReader {
  /** Deeper than any plan goes. */
  private static final int DEEPEST = 64;

  private static final int LONGEST_NUMBER = 100;
  private static final int LONGEST_TEXT = 100_000;
  private static final int SHOWN = 24;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          // Read, to be refused by name and place rather than as broken grammar.
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST + 1)
                  .maxNumberLength(LONGEST_NUMBER)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(LONGEST_TEXT)
                  .build())
          .build();

  private final String text;
  private final Deque<String> path = new ArrayDeque<>();
  private final JsonParser parser;

  private JsonReader(String text) {
    this.text = text;
    this.parser = FACTORY.createParser(ObjectReadContext.empty(), text);
  }

  /** The value in {@code text}. */
  public static Json read(String text) throws JsonFault {
    JsonReader reader = new JsonReader(text);
    try (JsonParser parser = reader.parser) {
      if (parser.nextToken() == null) {
        throw reader.fault(JsonFault.Kind.EMPTY, "");
      }
      Json value = reader.value(0);
      if (parser.nextToken() != null) {
        throw reader.fault(JsonFault.Kind.TRAILING, reader.near(parser.currentTokenLocation()));
      }
      return value;
    } catch (JacksonException e) {
      throw reader.fault(e);
    }
  }

  private Json value(int depth) throws JsonFault {
    if (depth > DEEPEST) {
      throw fault(JsonFault.Kind.TOO_DEEP, "");
    }
    int line = parser.currentTokenLocation().getLineNr();
    return switch (parser.currentToken()) {
      case START_OBJECT -> members(depth, line);
      case START_ARRAY -> items(depth, line);
      case VALUE_STRING -> new Json.Text(parser.getString(), line);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(line);
      case VALUE_TRUE -> new Json.Flag(true, line);
      case VALUE_FALSE -> new Json.Flag(false, line);
      case VALUE_NULL -> new Json.Nothing(line);
      case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
          throw fault(JsonFault.Kind.GRAMMAR, near(parser.currentTokenLocation()));
    };
  }

  private Json number(int line) throws JsonFault {
    String digits = parser.getString();
    if (parser.isNaN()) {
      throw fault(JsonFault.Kind.NOT_FINITE, digits);
    }
    return new Json.Figure(digits, line);
  }

  private Json members(int depth, int line) throws JsonFault {
    Map<String, Json> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      path.addLast((path.isEmpty() ? "" : ".") + name);
      if (members.containsKey(name)) {
        throw fault(JsonFault.Kind.TWICE, name);
      }
      parser.nextToken();
      members.put(name, value(depth + 1));
      path.removeLast();
    }
    return new Json.Members(members, line);
  }

  private Json items(int depth, int line) throws JsonFault {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      path.addLast("[" + items.size() + "]");
      items.add(value(depth + 1));
      path.removeLast();
    }
    return new Json.Items(items, line);
  }

  private JsonFault fault(JsonFault.Kind kind, String near) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new JsonFault(
        kind,
        String.join("", path),
        Math.max(1, at.getLineNr()),
        Math.max(1, at.getColumnNr()),
        near);
  }

  private JsonFault fault(JacksonException e) {
    TokenStreamLocation at = e.getLocation() == null ? TokenStreamLocation.NA : e.getLocation();
    JsonFault.Kind kind =
        switch (e) {
          case StreamConstraintsException c ->
              parser.streamReadContext().getNestingDepth() >= DEEPEST
                  ? JsonFault.Kind.TOO_DEEP
                  : JsonFault.Kind.TOO_LONG;
          case UnexpectedEndOfInputException u -> JsonFault.Kind.ENDS_EARLY;
          default ->
              text.isBlank() || at.getCharOffset() < text.stripTrailing().length()
                  ? JsonFault.Kind.GRAMMAR
                  : JsonFault.Kind.ENDS_EARLY;
        };
    return new JsonFault(
        kind,
        String.join("", path),
        Math.max(1, at.getLineNr()),
        Math.max(1, at.getColumnNr()),
        near(at));
  }

  /** A little of the text at a place, to the end of its line at most. */
  private String near(TokenStreamLocation at) {
    // The parser stands behind the character it could not take.
    int from = Math.clamp(at.getCharOffset() - 1, 0, text.length());
    int end = text.indexOf('\n', from + 1);
    int to = Math.min(end < 0 ? text.length() : end, from + SHOWN);
    return text.substring(from, to).strip().replaceAll("\\p{Cntrl}", "?");
  }
}
