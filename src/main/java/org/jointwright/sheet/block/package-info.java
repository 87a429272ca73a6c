/** What pages are put together of: lettering, lines of text, tables, lists, and how they flow. */
@NullMarked
package org.jointwright.sheet.block;

import org.jspecify.annotations.NullMarked;
