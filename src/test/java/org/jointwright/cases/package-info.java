/** The open cases, laid and measured: what each costs beside the best layout known for it. */
@NullMarked
package org.jointwright.cases;

import org.jspecify.annotations.NullMarked;
