/**
 * What the panes say of the desk, as data: the facts of what is picked, which of them can be typed
 * anew and what that does, the steps of the job, the findings in words. No toolkit is known here.
 */
@NullMarked
package org.jointwright.designer.facts;

import org.jspecify.annotations.NullMarked;
