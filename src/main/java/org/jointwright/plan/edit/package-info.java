/**
 * Edits of a plan and the history that undoes them. An edit is a value that names things by id and
 * makes a new plan; the history keeps plans, so undoing needs no inverse.
 */
@NullMarked
package org.jointwright.plan.edit;

import org.jspecify.annotations.NullMarked;
