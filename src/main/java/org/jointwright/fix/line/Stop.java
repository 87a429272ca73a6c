package org.jointwright.fix.line;

import org.jointwright.joint.Source;
import org.jointwright.shape.Point;

/**
 * Where a chalked line meets another line.
 *
 * @param at where
 * @param source what it meets
 * @param wall whether the concrete ends there
 * @param good whether a joint may end there and make no tee: at a wall, at filler, at a
 *     construction joint, or where another joint goes on
 */
public record Stop(Point at, Source source, boolean wall, boolean good) {}
