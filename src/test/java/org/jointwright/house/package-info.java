/** What holds the house up: borders, sizes, names and words, each a test with its reason. */
@NullMarked
package org.jointwright.house;

import org.jspecify.annotations.NullMarked;
