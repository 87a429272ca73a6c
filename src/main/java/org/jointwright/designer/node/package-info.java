/** The small parts that panes are made of; they know how they look, and nothing of the desk. */
@NullMarked
package org.jointwright.designer.node;

import org.jspecify.annotations.NullMarked;
