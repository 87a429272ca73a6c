package org.jointwright.plan;

import java.util.Map;
import java.util.Optional;

/**
 * What the plan file said that the plan itself does not need: keys nobody knows, and lengths as
 * they were typed. Carried along by every part of the plan so that saving loses nothing.
 *
 * @param unknown key to its value as JSON text
 * @param typed field name ({@code "thickness"}, {@code "at.x"}) to what was typed there
 */
public record Kept(Map<String, String> unknown, Map<String, Typed> typed) {
  /** Nothing kept. */
  public static final Kept NOTHING = new Kept(Map.of(), Map.of());

  /** Copies both maps. */
  public Kept {
    // Ordered copies: the file is written back in the order it was read.
    unknown = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(unknown));
    typed = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(typed));
  }

  /**
   * A length, or a volume, as it was typed.
   *
   * @param text the text, as the file had it
   * @param inches what it was read as; cubic inches for a volume
   */
  public record Typed(String text, double inches) {}

  /** What was typed for {@code field}, as long as it still says {@code inches}. */
  public Optional<String> typedFor(String field, double inches) {
    return Optional.ofNullable(typed.get(field)).filter(t -> t.inches() == inches).map(Typed::text);
  }
}
