package org.jointwright.designer.settings;

/** Whether the window is light or dark. */
public enum Look {
  /** As the system's other windows are. */
  SYSTEM,
  /** Light. */
  LIGHT,
  /** Dark. */
  DARK;

  /** Whether the window is dark, on a system whose windows are or are not. */
  public boolean isDark(boolean isSystemDark) {
    return this == DARK || (this == SYSTEM && isSystemDark);
  }
}
