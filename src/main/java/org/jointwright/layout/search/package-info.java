/**
 * The search: patterns and cuts to try, a beam that keeps the most hopeful drafts, and a climb that
 * shifts, turns and drops the cuts of the best.
 */
@NullMarked
package org.jointwright.layout.search;

import org.jspecify.annotations.NullMarked;
