/**
 * The words that people read: message keys, their bundles, and numbers and units for a reader's
 * language and measures. No other package holds a sentence.
 */
@NullMarked
package org.jointwright.text;

import org.jspecify.annotations.NullMarked;
