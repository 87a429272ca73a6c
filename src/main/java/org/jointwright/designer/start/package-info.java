/**
 * Opens the window, connects it with the program behind it, and makes pictures of it without a
 * screen.
 */
@NullMarked
package org.jointwright.designer.start;

import org.jspecify.annotations.NullMarked;
