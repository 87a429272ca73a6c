package org.jointwright.designer.start;

import org.jointwright.designer.settings.RecentFiles;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.SettingsFile;
import org.jointwright.designer.settings.SettingsPlace;

/**
 * What a window knows from the last time.
 *
 * @param settings what the user chose of it
 * @param recent what was opened
 */
record Memory(SettingsPlace settings, RecentFiles recent) {
  /** What this user’s folder keeps. */
  static Memory ofUser() {
    return new Memory(SettingsFile.ofUser(), RecentFiles.ofUser());
  }

  /** Nothing but these settings, and nothing is kept. */
  static Memory only(Settings settings) {
    return new Memory(SettingsPlace.nowhere(settings), RecentFiles.NONE);
  }
}
