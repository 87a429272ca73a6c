package org.jointwright.check.face;

import org.jointwright.shape.Point;

/**
 * A corner of a panel: one place where two sides meet, or several less than 1/2 in apart taken
 * together, or a concave arc of small radius with its ends.
 *
 * @param at where it is
 * @param interior the interior angle, degrees; turns of what is taken together added
 * @param first the number of the step that leaves its first place
 * @param count how many places it holds
 */
public record Knot(Point at, double interior, int first, int count) {}
