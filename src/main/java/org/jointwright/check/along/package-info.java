/** Where lines lie on other lines and points on lines, by the rules' tolerances. */
@NullMarked
package org.jointwright.check.along;

import org.jspecify.annotations.NullMarked;
