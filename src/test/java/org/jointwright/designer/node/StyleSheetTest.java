package org.jointwright.designer.node;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.css.CssParser;
import javafx.css.Declaration;
import javafx.css.Rule;
import javafx.css.Stylesheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window’s style sheet, and what the build writes beside it for a quicker start. */
class StyleSheetTest {
  private static final File SHEET =
      Path.of("src/main/resources/org/jointwright/designer/window.css").toFile();

  private static List<String> rules(Stylesheet sheet) {
    return sheet.getRules().stream().map(StyleSheetTest::said).toList();
  }

  /** Whom it is for, and the names of what it says. */
  private static String said(Rule rule) {
    return rule.getSelectors()
        + rule.getDeclarations().stream().map(Declaration::getProperty).toList().toString();
  }

  @Test
  void theToolkitUnderstandsAllOfIt() throws Exception {
    CssParser.errorsProperty().clear();
    Stylesheet read = new CssParser().parse(SHEET.toURI().toURL());
    assertThat(CssParser.errorsProperty()).isEmpty();
    assertThat(read.getRules()).hasSizeGreaterThan(80);
  }

  @Test
  void whatLiesBesideItSaysTheSame(@TempDir Path folder) throws Exception {
    File binary = folder.resolve("window.bss").toFile();
    Stylesheet.convertToBinary(SHEET, binary);
    Stylesheet read = Stylesheet.loadBinary(binary.toURI().toURL());
    assertThat(rules(read)).isEqualTo(rules(new CssParser().parse(SHEET.toURI().toURL())));
  }
}
