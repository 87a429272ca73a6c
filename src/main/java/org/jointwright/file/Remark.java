package org.jointwright.file;

import java.util.List;
import org.jointwright.text.Words;

/**
 * Something to tell the user about a file: what is wrong and what to write instead, or what was
 * mended.
 *
 * @param place where, {@code slabs[0].outline[3]}; empty for the file as a whole
 * @param line the line in the file, from 1, or 0 where there is none to name
 * @param key what the words say, in the bundle {@code file}
 * @param arguments what fills the places in the words
 */
public record Remark(String place, int line, String key, List<Object> arguments) {
  /** Copies the list. */
  public Remark {
    arguments = List.copyOf(arguments);
  }

  /** A remark about the file as a whole. */
  public static Remark whole(String key, Object... arguments) {
    return new Remark("", 0, key, List.of(arguments));
  }

  /** The remark in the reader's words, its place before it. */
  public String say(Words words) {
    String what = words.say(key, arguments.toArray());
    if (line == 0) {
      return place.isEmpty() ? what : words.say("file.at", place, what);
    }
    String number = Integer.toString(line);
    return place.isEmpty()
        ? words.say("file.atLine", number, what)
        : words.say("file.atPlaceAndLine", place, number, what);
  }
}
