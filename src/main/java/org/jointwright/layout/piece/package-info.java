/**
 * Pieces of a slab and clean cuts across them. A piece is a ring of true edges and arcs, each
 * tagged with what it runs along; a cut divides one piece in two (or ties a hole to the outside),
 * so that whatever is cut stays a partition of the slab and no joint is left hanging. Inches
 * throughout.
 */
@NullMarked
package org.jointwright.layout.piece;

import org.jspecify.annotations.NullMarked;
