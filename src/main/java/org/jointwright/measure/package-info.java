/**
 * Lengths, areas, volumes, angles and slopes; reading and printing feet-inches and metric. Uses
 * nothing else of the program.
 */
@NullMarked
package org.jointwright.measure;

import org.jspecify.annotations.NullMarked;
