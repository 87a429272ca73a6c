/**
 * The one door to the JTS library: what only it works out, given and returned in our own shapes.
 */
@NullMarked
package org.jointwright.shape.jts;

import org.jspecify.annotations.NullMarked;
