/**
 * JSON as a tree that knows where each value stood: numbers keep their text, so that a file can be
 * written back as it was. Reading is strict and bounded; printing is the same for the same tree.
 */
@NullMarked
package org.jointwright.file.json;

import org.jspecify.annotations.NullMarked;
