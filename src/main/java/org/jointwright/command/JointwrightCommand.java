package org.jointwright.command;

import picocli.CommandLine.Command;

/** The program itself, which without a command opens the window. */
@Command(name = "jointwright")
final class JointwrightCommand {}
