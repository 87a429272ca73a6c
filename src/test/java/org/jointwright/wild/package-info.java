/**
 * Slabs that nobody would pour, by the hundred thousand: what reads, cuts and judges them may never
 * fail, and is held against a second opinion that is worked out from plain geometry alone.
 */
@NullMarked
package org.jointwright.wild;

import org.jspecify.annotations.NullMarked;
