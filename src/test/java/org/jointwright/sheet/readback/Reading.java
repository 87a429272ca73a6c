package org.jointwright.sheet.readback;

import java.util.List;
import java.util.Map;
import org.jointwright.shape.Point;

/**
 * What a printed cut sheet says. Lengths are inches, places on the page millimetres.
 *
 * @param scale how many times smaller than true the plan is drawn
 * @param letters where each corner's letter stands on the page
 * @param sides the sides by their names
 * @param arcs how far the sides that are arcs bow, and their chords, by their names
 * @param bends where corners and straight sides stand off a string
 * @param ties the diagonals
 * @param rows the joints to cut and to form
 * @param strips the filler
 * @param boxOuts the box-outs
 * @param figures the figures of the chains on the plan
 */
record Reading(
    double scale,
    Map<String, Point> letters,
    Map<String, Side> sides,
    Map<String, Bow> arcs,
    List<Bend> bends,
    List<Tie> ties,
    List<Row> rows,
    List<Strip> strips,
    List<BoxOut> boxOuts,
    List<Figure> figures) {

  record Side(
      String from, String to, double length, Map<String, Double> corners, List<Double> marks) {}

  record Bow(double radius, double chord, double left) {}

  /** A point off the string of a side: a corner, or a bend of that side where no letter is said. */
  record Bend(String corner, Where.Off off) {}

  record Tie(String from, String to, double length) {}

  record Row(int number, Where from, Where to, double bow, double length) {}

  record Strip(int number, String where, double length, double width, double depth) {}

  record BoxOut(int number, Map<String, Double> sizes, List<Where> places) {}

  record Figure(double value, Point at, String text) {}

  /** A place as it is told. */
  sealed interface Where {
    record Corner(String letter) implements Where {}

    record Mark(String side, double along) implements Where {}

    record Off(String side, double along, double left) implements Where {}

    record AtBoxOut(int number) implements Where {}

    /** So far along a joint; its whole length where {@code along} is infinite. */
    record OnJoint(int number, double along) implements Where {}
  }
}
