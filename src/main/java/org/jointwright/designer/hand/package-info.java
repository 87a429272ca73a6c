/**
 * What the hand does on the plan: one class for each gesture, each a pure change of the desk. Which
 * one begins is decided by what lies under the pointer.
 */
@NullMarked
package org.jointwright.designer.hand;

import org.jspecify.annotations.NullMarked;
