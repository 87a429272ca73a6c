/**
 * An outline while it is drawn: the strokes so far, the pencil and what gently draws it, and what a
 * typed sentence means for the next stroke. Knows nothing of the rest of the desk.
 */
@NullMarked
package org.jointwright.designer.sketch;

import org.jspecify.annotations.NullMarked;
