/**
 * What both front ends call: open, lay out, check, print, save. The command line and the window get
 * the same answers because they ask here; neither knows the engine, the files or the sheets.
 */
@NullMarked
package org.jointwright.app;

import org.jspecify.annotations.NullMarked;
