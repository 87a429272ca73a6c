package org.jointwright.plan;

import org.jointwright.shape.Point;

/**
 * A lettered place where the tape hooks.
 *
 * @param letter its letter, one for the whole job
 * @param at where it stands
 */
public record LetteredCorner(String letter, Point at) {}
