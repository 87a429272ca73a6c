/** Says the reasons of joints in words. */
@NullMarked
package org.jointwright.reason.words;

import org.jspecify.annotations.NullMarked;
