package org.jointwright.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.jointwright.practice.Cited;
import org.jointwright.shape.Point;

/**
 * What a rule has to say about one place of a slab. Holds no words: {@code key} and {@code
 * arguments} make them.
 *
 * @param rule the rule's short name, {@code "M1"} for example
 * @param severity how much it weighs
 * @param slab the id of the slab
 * @param subject what it is about
 * @param at where
 * @param measured what was found: inches, degrees, or a plain number, as the rule measures
 * @param limit what the rule allows there, in the same measure
 * @param key the message's key
 * @param arguments what fills the message's places: lengths, numbers, names
 * @param sources where the limit comes from, the weightiest first
 */
public record Finding(
    String rule,
    Severity severity,
    String slab,
    Subject subject,
    Point at,
    double measured,
    double limit,
    String key,
    List<Object> arguments,
    List<Cited> sources) {
  /** Copies the lists. */
  public Finding {
    arguments = List.copyOf(arguments);
    sources = List.copyOf(sources);
  }

  /** The key of its rule's name in words. */
  public String nameKey() {
    return Check.nameKey(rule);
  }

  /** The id of the panel that it is about, if it is about one. */
  public Optional<String> panel() {
    return subject instanceof Subject.OnPanel p ? Optional.of(p.panel()) : Optional.empty();
  }

  /** The id of the joint that it is about, if it is about one. */
  public Optional<String> joint() {
    return subject instanceof Subject.OnJoint j ? Optional.of(j.joint()) : Optional.empty();
  }

  /**
   * Every source in words, the weightiest first, with semicolons between.
   *
   * @param say words by key, with what fills their place
   */
  public String sourcesSaid(BinaryOperator<String> say) {
    return sources.stream().map(c -> said(c, say)).collect(Collectors.joining("; "));
  }

  /**
   * A source in words.
   *
   * @param say words by key, with what fills their place
   */
  public static String said(Cited source, BinaryOperator<String> say) {
    return say.apply(
        "check.source." + source.flag().name().toLowerCase(Locale.ROOT), source.reference());
  }
}
