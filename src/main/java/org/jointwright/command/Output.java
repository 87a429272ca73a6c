package org.jointwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.jointwright.app.Saving;
import org.jspecify.annotations.Nullable;

/** Where the answer goes: a file, or standard output. */
final class Output {
  private final Console console;
  private final Optional<Path> file;

  private Output(Console console, Optional<Path> file) {
    this.console = console;
    this.file = file;
  }

  /** Standard output where {@code name} is absent or {@code -}. */
  static Output of(Console console, @Nullable String name) {
    if (name == null || name.equals("-")) {
      return new Output(console, Optional.empty());
    }
    try {
      return new Output(console, Optional.of(Path.of(name)));
    } catch (InvalidPathException e) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.noFileName", name));
    }
  }

  /** A file, whatever its name. */
  static Output onto(Console console, Path file) {
    return new Output(console, Optional.of(file));
  }

  /** Whether the answer would be written over that file. */
  boolean isOnto(Path other) {
    try {
      return file.isPresent()
          && Files.exists(file.get())
          && Files.exists(other)
          && Files.isSameFile(file.get(), other);
    } catch (IOException e) {
      return false;
    }
  }

  /** Writes the answer; one that cannot be written ends the command. */
  void write(String text) {
    write(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes an answer that is no text; one that cannot be written ends the command. */
  void write(byte[] bytes) {
    try {
      if (file.isPresent()) {
        Saving.save(file.get(), bytes);
      } else {
        console.put(bytes);
      }
    } catch (IOException e) {
      throw notWritten();
    }
  }

  private Stop notWritten() {
    String said =
        file.map(f -> Said.WORDS.say("command.notWritten", f.toString()))
            .orElseGet(() -> Said.WORDS.say("command.outputBroke"));
    return new Stop(Outcome.NOT_WRITTEN, said);
  }
}
