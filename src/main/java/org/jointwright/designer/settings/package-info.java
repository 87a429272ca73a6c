/**
 * What the user has chosen of the window itself, whatever the job: language, measures, look, size
 * of text; and where that is remembered.
 */
@NullMarked
package org.jointwright.designer.settings;

import org.jspecify.annotations.NullMarked;
