/**
 * The command line: what is asked for goes to standard output, what is said about it to standard
 * error, and the exit code tells how it went.
 */
@NullMarked
package org.jointwright.command;

import org.jspecify.annotations.NullMarked;
