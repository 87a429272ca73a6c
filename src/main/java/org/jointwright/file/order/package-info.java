/** What a plan takes, written for other programs. */
@NullMarked
package org.jointwright.file.order;

import org.jspecify.annotations.NullMarked;
