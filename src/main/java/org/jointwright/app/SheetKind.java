package org.jointwright.app;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A kind of sheet, in the order in which they lie in a set. */
public enum SheetKind {
  /** The owner's plan: first in a set, for it leaves room for the index. */
  OWNER("owner", "owners-plan", "sheet.owner.title"),
  /** The crew's cut sheet. */
  CREW("crew", "cut-sheet", "sheet.cut.title"),
  /** The form sheet. */
  FORMS("forms", "form-sheet", "sheet.forms.title"),
  /** The order sheet. */
  PLANT("plant", "order-sheet", "sheet.order.title");

  private final String whom;
  private final String file;
  private final String title;

  SheetKind(String whom, String file, String title) {
    this.whom = whom;
    this.file = file;
    this.title = title;
  }

  /** Whom it is for, in one word. */
  public String whom() {
    return whom;
  }

  /** The key of its title. */
  public String title() {
    return title;
  }

  /** What its files are called after the plan's name. */
  String file() {
    return file;
  }

  /** The kind that is for them; empty where there is none. */
  public static Optional<SheetKind> of(String whom) {
    return Arrays.stream(values()).filter(k -> k.whom.equals(whom)).findFirst();
  }

  /** Whom there are sheets for. */
  public static List<String> all() {
    return Arrays.stream(values()).map(SheetKind::whom).toList();
  }
}
