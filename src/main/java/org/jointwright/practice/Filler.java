package org.jointwright.practice;

import java.util.List;
import org.jointwright.measure.Length;

/** Filler in isolation joints: it goes the full depth of the slab. */
public final class Filler {
  /** The usual width, at walks, buildings and fixed objects. */
  public static final Limit<Length> WIDTH =
      Limit.of(
          Length.inches(1.0 / 2),
          Cited.read("ready-mix association profile on joints", "", "isolation joints"),
          Cited.read(Documents.UFGS_03300N, "", "3.8.3"));

  /** The width at the street. */
  public static final Limit<Length> WIDTH_AT_STREET =
      Limit.of(
          Length.inches(3.0 / 4),
          Cited.read("FHWA T 5040.30", "1990", "paragraph 7"),
          Cited.read("West Dundee, Illinois, sidewalk standards", "", "item D"));

  /** How far the filler's top stands below the surface, where a sealant goes on it. */
  public static final Limit<Length> SET_DOWN =
      Limit.of(
          Length.inches(1.0 / 2), Cited.read("Eldridge, Iowa, sidewalk standards", "", "item B"));

  /** Widths that are sold. */
  public static final Limit<List<Length>> SOLD =
      Limit.of(
          List.of(
              Length.inches(1.0 / 4),
              Length.inches(3.0 / 8),
              Length.inches(1.0 / 2),
              Length.inches(3.0 / 4)),
          Cited.practice());

  private Filler() {}
}
