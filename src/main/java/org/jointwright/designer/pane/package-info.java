/**
 * The panes round the plan: the bar, the path of steps, the facts of what is picked, the findings;
 * and the board that holds the desk and tells them when it changes.
 */
@NullMarked
package org.jointwright.designer.pane;

import org.jspecify.annotations.NullMarked;
