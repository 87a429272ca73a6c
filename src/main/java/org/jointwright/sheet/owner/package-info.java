/**
 * The owner's plan: a clean picture of what is built, what it is made of, and why it has joints.
 */
@NullMarked
package org.jointwright.sheet.owner;

import org.jspecify.annotations.NullMarked;
