/**
 * The immutable plan: slabs, edges, openings, fixed objects, joints, the job's facts; edits that
 * name things by id, and the history that undoes them.
 */
@NullMarked
package org.jointwright.plan;

import org.jspecify.annotations.NullMarked;
