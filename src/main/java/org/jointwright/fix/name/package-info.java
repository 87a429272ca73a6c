/**
 * What joints and places on a slab are called in what a fix says: a joint by its slab and id, a
 * place by the tape and its mark or by what stands there.
 *
 * <p>In: the letters of a slab's corners and lines of its floor. Out: values that words are filled
 * with, and which fixed objects a finding is to be named with. Nothing here knows what a fix is.
 */
@NullMarked
package org.jointwright.fix.name;

import org.jspecify.annotations.NullMarked;
