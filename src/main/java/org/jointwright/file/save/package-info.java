/** Safe saving: a file is written whole or not at all. */
@NullMarked
package org.jointwright.file.save;

import org.jspecify.annotations.NullMarked;
