package org.jointwright.designer.settings;

/** Where the user's choices are remembered from one start to the next. */
public interface SettingsPlace {
  /** What was chosen last; {@link Settings#FIRST} where nothing is remembered. */
  Settings read();

  /** Remembers what was chosen, if that can be. */
  void write(Settings settings);

  /** A place that begins with {@code settings} and forgets what is chosen. */
  static SettingsPlace nowhere(Settings settings) {
    return new SettingsPlace() {
      @Override
      public Settings read() {
        return settings;
      }

      @Override
      public void write(Settings chosen) {
        // Nothing is remembered.
      }
    };
  }
}
