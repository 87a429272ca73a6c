package org.jointwright.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;

/** Standard output itself: the usual print stream would hide that it cannot be written. */
final class PlainOutput extends FileOutputStream {
  PlainOutput() {
    super(FileDescriptor.out);
  }
}
