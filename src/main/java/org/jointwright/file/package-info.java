/**
 * Plan files, the layout output, and safe saving. Reading gives a plan or every problem that was
 * found, each with its place; whatever the program does not know is kept and written back. Writing
 * the same plan gives the same bytes. The JSON library is used below this package and nowhere else.
 */
@NullMarked
package org.jointwright.file;

import org.jspecify.annotations.NullMarked;
