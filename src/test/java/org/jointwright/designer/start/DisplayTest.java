package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DisplayTest {
  @ParameterizedTest
  @ValueSource(strings = {"dri", "nvidiactl", "mali0", "kgsl-3d0", "dxg"})
  void aMachineWithAGraphicsProcessorHasADeviceForIt(String device, @TempDir Path devices)
      throws Exception {
    Files.createFile(devices.resolve(device));
    assertThat(Display.hasGraphics(devices)).isTrue();
  }

  @Test
  void oneThatHasOtherDevicesOnlyPaintsByItsProcessor(@TempDir Path devices) throws Exception {
    Files.createFile(devices.resolve("null"));
    Files.createFile(devices.resolve("fb0"));
    assertThat(Display.hasGraphics(devices)).isFalse();
    assertThat(Display.hasGraphics(devices.resolve("none"))).isFalse();
  }
}
