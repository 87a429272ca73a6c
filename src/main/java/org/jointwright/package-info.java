/** Jointwright: lays out the joints of concrete flatwork. Only the start class lives here. */
@NullMarked
package org.jointwright;

import org.jspecify.annotations.NullMarked;
