/** PNG and JPEG pictures by what they say of themselves; nothing here draws one. */
@NullMarked
package org.jointwright.picture;

import org.jspecify.annotations.NullMarked;
