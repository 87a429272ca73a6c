package org.jointwright.joint;

import org.jointwright.shape.Edge;

/**
 * One side of a panel, between two nodes where lines meet or turn.
 *
 * @param edge where it runs, the panel on its left; an arc stays an arc
 * @param source what it runs along
 */
public record Side(Edge edge, Source source) {}
