package org.jointwright.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The texts of one language, read bundle by bundle as they are asked for; English where none is.
 */
final class Bundles {
  private final Locale locale;
  private final Map<String, Properties> read = new ConcurrentHashMap<>();

  Bundles(Locale locale) {
    this.locale = locale;
  }

  String text(String key) {
    String text = find(key);
    if (text == null) {
      throw new IllegalArgumentException("no text for the key " + key + " in " + locale);
    }
    return text;
  }

  boolean has(String key) {
    return find(key) != null;
  }

  private @Nullable String find(String key) {
    int dot = key.indexOf('.');
    return dot <= 0
        ? null
        : read.computeIfAbsent(key.substring(0, dot), this::bundle).getProperty(key);
  }

  private Properties bundle(String area) {
    Properties english = new Properties();
    load(area + ".properties", english);
    if (locale.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
      return english;
    }
    Properties translated = new Properties(english);
    load(area + "_" + locale.getLanguage() + ".properties", translated);
    return translated;
  }

  private static void load(String name, Properties into) {
    try (InputStream in = Bundles.class.getResourceAsStream(name)) {
      if (in != null) {
        into.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the texts " + name + " cannot be read", e);
    }
  }
}
