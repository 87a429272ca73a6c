/**
 * The window: {@code state} holds what is on the desk as records without a toolkit, {@code hand}
 * what each gesture does to it, {@code canvas} paints it, {@code pane} shows the rest of it, and
 * {@code start} opens the window and connects it with the program.
 */
@NullMarked
package org.jointwright.designer;

import org.jspecify.annotations.NullMarked;
