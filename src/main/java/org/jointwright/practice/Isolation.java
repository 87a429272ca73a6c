package org.jointwright.practice;

/** Where isolation joints belong. */
public final class Isolation {
  /** At walls, columns and whatever else holds the slab. */
  public static final Cited WHERE = Cited.read(Documents.CIP_6, "", "on isolation joints");

  /** The same, for walks, drives and pavement. */
  public static final Cited WHERE_FLATWORK =
      Cited.read("trade journal answer on expansion joints", "", "where they belong");

  /** A needless one lets the joints beside it open within a few years. */
  public static final Cited NEEDLESS = Cited.read("FHWA T 5040.30", "1990", "paragraph 7.a");

  private Isolation() {}
}
