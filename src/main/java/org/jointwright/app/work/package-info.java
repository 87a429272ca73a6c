/** The work in a window, kept safe apart from the user's file, and found again after a crash. */
@NullMarked
package org.jointwright.app.work;

import org.jspecify.annotations.NullMarked;
