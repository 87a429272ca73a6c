package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.paint.Color;
import org.jointwright.drawing.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The colours can be read, and told apart by people who see fewer of them. */
class ThemeTest {
  private static final List<Role> GROUNDS =
      List.of(Role.GROUND, Role.PAPER, Role.PANEL, Role.BUILDING, Role.STREET);

  /** Relative luminance, WCAG 2.1. */
  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(double v) {
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static double contrast(Theme theme, Role a, Role b) {
    double x = luminance(theme.color(a));
    double y = luminance(theme.color(b));
    return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
  }

  @ParameterizedTest
  @EnumSource
  void textReadsOnEveryGroundItMeets(Theme theme) {
    for (Role ground : GROUNDS) {
      for (Role text : List.of(Role.TEXT, Role.QUIET_TEXT)) {
        if (text == Role.TEXT || ground != Role.BUILDING) {
          assertThat(contrast(theme, text, ground)).as(text + " on " + ground).isGreaterThan(4.5);
        }
      }
    }
    assertThat(contrast(theme, Role.ON_MUST, Role.MUST)).isGreaterThan(4.5);
    assertThat(contrast(theme, Role.ON_SHOULD, Role.SHOULD)).isGreaterThan(4.5);
    assertThat(contrast(theme, Role.SELECTED, Role.PAPER)).isGreaterThan(4.5);
  }

  @ParameterizedTest
  @EnumSource
  void marksStandOutOnThePaperAndOnPanels(Theme theme) {
    for (Role ground : List.of(Role.PAPER, Role.PANEL)) {
      for (Role mark :
          List.of(
              Role.OUTLINE,
              Role.CONTRACTION,
              Role.CONSTRUCTION,
              Role.FILLER_LINE,
              Role.FIXED,
              Role.FEATURE,
              Role.GIVEN,
              Role.ZONE,
              Role.MUST,
              Role.SELECTED,
              Role.POINTED,
              Role.STRING,
              Role.NOTE)) {
        assertThat(contrast(theme, mark, ground)).as(mark + " on " + ground).isGreaterThan(3.2);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void whatMattersStaysApartForThreeColourBlindnesses(Theme theme) {
    List<Role> apart = List.of(Role.MUST, Role.SHOULD, Role.SELECTED, Role.STRING);
    for (double[][] seen : BLINDNESSES) {
      for (Role a : apart) {
        for (Role b : apart) {
          if (a.compareTo(b) < 0) {
            double[] x = lab(seenAs(seen, theme.color(a)));
            double[] y = lab(seenAs(seen, theme.color(b)));
            double d = Math.sqrt(square(x[0] - y[0]) + square(x[1] - y[1]) + square(x[2] - y[2]));
            assertThat(d).as(a + " and " + b).isGreaterThan(12);
          }
        }
      }
    }
  }

  /** Machado, Oliveira and Fernandes 2009, severity 1, on linear RGB; from memory. */
  private static final double[][][] BLINDNESSES = {
    {
      {0.152286, 1.052583, -0.204868},
      {0.114503, 0.786281, 0.099216},
      {-0.003882, -0.048116, 1.051998}
    },
    {
      {0.367322, 0.860646, -0.227968},
      {0.280085, 0.672501, 0.047413},
      {-0.011820, 0.042940, 0.968881}
    },
    {
      {1.255528, -0.076749, -0.178779},
      {-0.078411, 0.930809, 0.147602},
      {0.004733, 0.691367, 0.303900}
    },
  };

  private static double square(double v) {
    return v * v;
  }

  private static double[] seenAs(double[][] m, Color c) {
    double[] rgb = {linear(c.getRed()), linear(c.getGreen()), linear(c.getBlue())};
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = Math.clamp(m[i][0] * rgb[0] + m[i][1] * rgb[1] + m[i][2] * rgb[2], 0, 1);
    }
    return out;
  }

  /** CIELAB of linear sRGB under D65. */
  private static double[] lab(double[] rgb) {
    double x = (0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505;
    double y = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    double z = (0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.089;
    return new double[] {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
  }

  private static double f(double t) {
    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }
}
