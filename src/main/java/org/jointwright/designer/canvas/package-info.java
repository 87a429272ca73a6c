/**
 * The plan as it is seen: colours and fonts in one place, neutral marks painted on a canvas of the
 * size of the window, labels placed so that none covers another, and what is live laid above.
 */
@NullMarked
package org.jointwright.designer.canvas;

import org.jspecify.annotations.NullMarked;
