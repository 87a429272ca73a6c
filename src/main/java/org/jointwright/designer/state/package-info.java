/**
 * What is on the desk, as immutable records with pure transitions: the plan and its history, what
 * is picked, what is being drawn, what was laid last, and how the plan lies in the window. No
 * toolkit is known here, so every transition is tested without one.
 */
@NullMarked
package org.jointwright.designer.state;

import org.jspecify.annotations.NullMarked;
