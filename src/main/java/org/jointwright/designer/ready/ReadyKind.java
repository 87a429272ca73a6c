package org.jointwright.designer.ready;

import java.util.List;
import org.jointwright.plan.Use;

/** The shapes that need no drawing, each with its sizes. The first ones are common practice. */
public enum ReadyKind {
  /** A rectangle: across, then up. */
  RECTANGLE("rectangle", Use.CAR, ReadySize.feet("across", 20), ReadySize.feet("up", 30)),
  /** An L: an arm to the right, an arm up, each with its width. */
  ELL(
      "ell",
      Use.CAR,
      ReadySize.feet("across", 30),
      ReadySize.feet("acrossWide", 12),
      ReadySize.feet("up", 30),
      ReadySize.feet("upWide", 12)),
  /** An approach that widens towards the street, which is below. */
  FLARED(
      "flared",
      Use.CAR,
      ReadySize.feet("atDrive", 12),
      ReadySize.feet("up", 8),
      ReadySize.feet("flare", 3)),
  /** A drive with a bend, by its middle line. */
  DRIVE(
      "drive",
      Use.CAR,
      ReadySize.feet("wide", 12),
      ReadySize.perhaps("first", 20),
      ReadySize.feet("radius", 25),
      ReadySize.degrees("turn", 60, 1, 270),
      ReadySize.perhaps("last", 10)),
  /** A round pad. */
  CIRCLE("circle", Use.FOOT, ReadySize.feet("round", 12)),
  /** A part of a round pad, or of a ring. */
  SECTOR(
      "sector",
      Use.FOOT,
      ReadySize.feet("outer", 12),
      ReadySize.degrees("angle", 90, 5, 355),
      ReadySize.perhaps("inner", 0)),
  /** A walk with a square or a slanted bend, by its middle line. */
  WALK(
      "walk",
      Use.FOOT,
      ReadySize.feet("wide", 3),
      ReadySize.feet("first", 16),
      ReadySize.degrees("turn", 90, 0, 150),
      ReadySize.perhaps("last", 8));

  private final String word;
  private final Use use;

  // A copy that nobody can change.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<ReadySize> sizes;

  ReadyKind(String word, Use use, ReadySize... sizes) {
    this.word = word;
    this.use = use;
    this.sizes = List.of(sizes);
  }

  /** What it is called in the words of the window. */
  public String word() {
    return word;
  }

  /** What such a slab mostly carries. */
  public Use use() {
    return use;
  }

  /** The sizes it asks for, in their order. */
  public List<ReadySize> sizes() {
    return sizes;
  }

  /** Whether it looks otherwise in a mirror. */
  public boolean hasSides() {
    return this == ELL || this == DRIVE || this == WALK;
  }
}
