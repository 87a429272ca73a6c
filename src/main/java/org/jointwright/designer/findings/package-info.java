/** What the list of findings says, and what can be done about them, as data. */
@NullMarked
package org.jointwright.designer.findings;

import org.jspecify.annotations.NullMarked;
