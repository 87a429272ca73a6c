package org.jointwright.proof.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Point;
import org.jointwright.text.Language;

/**
 * What a printed cut sheet says.
 *
 * @param language the language it is printed in
 * @param units the measures it is printed in
 * @param scale how many times smaller than true the plan is drawn
 * @param letters where each corner's letter stands on the page, millimetres; says no more than on
 *     which side of the others a corner lies
 * @param sides the sides by their names
 * @param arcs the sides that are arcs, by their names
 * @param bends where corners and straight sides stand off a string
 * @param ties the diagonals
 * @param rows the joints to cut and to form
 * @param strips the filler
 * @param boxOuts the box-outs
 * @param marks the figures of the chains on the plan
 * @param slabs the slabs with their thickness
 * @param orders what the crew is told in sentences
 * @param tees where others are said to meet a joint, by its number
 * @param sizes the sizes that stand over tables of cuts
 * @param widths the widths of filler that the legend tells
 * @param bar the figures of the scale bar
 * @param figures every figure of the above, by its index
 * @param riddles what was not understood
 */
public record Reading(
    Language language,
    UnitSystem units,
    double scale,
    Map<String, Point> letters,
    Map<String, Side> sides,
    Map<String, Bow> arcs,
    List<Bend> bends,
    List<Tie> ties,
    List<Row> rows,
    List<Strip> strips,
    List<BoxOut> boxOuts,
    List<Figure> marks,
    List<Slab> slabs,
    Orders orders,
    Map<Integer, List<Figure>> tees,
    List<Cut> sizes,
    List<Figure> widths,
    List<Figure> bar,
    List<Figure> figures,
    List<Riddle> riddles) {

  /**
   * A side.
   *
   * @param from its first letter, where the tape hooks
   * @param to its last letter
   * @param length its whole length
   * @param corners the corners that stand on it
   * @param marks the other marks that are listed with it, since the plan has no room for them
   */
  public record Side(
      String from, String to, Figure length, Map<String, Figure> corners, List<Figure> marks) {
    /** Its name by its corners. */
    public String name() {
      return from + "–" + to;
    }
  }

  /**
   * How a side bows.
   *
   * @param sign 1 where it bows to the left, as it runs
   */
  public record Bow(Figure radius, Figure chord, Figure bow, int sign) {}

  /** A point off the string of a side: a corner, or a bend of that side. */
  public record Bend(Optional<String> corner, Where.Off at) {}

  /** A diagonal. */
  public record Tie(String from, String to, Figure length) {}

  /**
   * A joint to cut or to form.
   *
   * @param bow how far it bows at its middle, where it does
   * @param sign 1 where it bows to the left
   */
  public record Row(
      int number,
      Block block,
      Where from,
      Where to,
      Optional<Figure> bow,
      int sign,
      Figure length) {}

  /**
   * Filler.
   *
   * @param way where it lies
   */
  public record Strip(int number, Way way, Figure length, Figure width, Figure depth) {}

  /** Where filler lies. */
  public sealed interface Way {
    /** From corner to corner. */
    record Along(List<String> letters) implements Way {}

    /** From one point to another. */
    record Between(Where from, Where to) implements Way {}

    /** Round a box-out. */
    record Round() implements Way {}
  }

  /**
   * A box-out.
   *
   * @param sizes its sizes
   * @param places its middle, or else its corners
   */
  public record BoxOut(int number, Map<Size, Figure> sizes, List<Where> places) {
    /** What is measured of a box-out. */
    public enum Size {
      /** A circle's radius. */
      RADIUS,
      /** The radius of round ends. */
      END_RADIUS,
      /** From its middle to a tip. */
      TIP,
      /** Each of its sides. */
      EACH,
      /** Its size along the side that it is told from. */
      ALONG,
      /** Its size square to that. */
      ACROSS
    }
  }

  /** A slab that is named on the plan; the name is empty where there is one slab only. */
  public record Slab(String name, Figure thickness) {}

  /**
   * What the crew is told.
   *
   * @param cuts how joints are cut
   * @param dig how deep to dig
   * @param base how deep the base is
   * @param thicker where edges are thicker than their slab
   */
  public record Orders(List<Cut> cuts, List<Depth> dig, List<Depth> base, List<Thicker> thicker) {}

  /**
   * Edges that are thicker than their slab.
   *
   * @param sides the sides they are, by their names; a slab's name where a side has none
   * @param edge how thick they are
   * @param slab how thick the slab is
   * @param over how far in it is that thick again
   * @param dig how deep to dig there
   */
  public record Thicker(List<String> sides, Figure edge, Figure slab, Figure over, Figure dig) {}

  /** How deep and wide joints are cut. */
  public record Cut(Figure depth, Figure width) {}

  /** A depth that holds for some slabs; for all where none is named. */
  public record Depth(List<String> slabs, Figure depth) {}
}
