package org.jointwright.practice;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a figure comes from.
 *
 * @param document the document's name; empty where there is none
 * @param edition its year or edition; empty where the text that was read shows none
 * @param place the section, table or item; empty where none is known
 * @param flag how well it is known
 */
public record Cited(String document, String edition, String place, Flag flag) {
  /** Refuses a read figure without a document. */
  public Cited {
    boolean named = !document.isBlank();
    switch (flag) {
      case READ, READ_SECOND_HAND, MEMORY -> {
        if (!named) {
          throw new IllegalArgumentException("a figure that was read or remembered names where");
        }
      }
      case PRACTICE, OWN_CHOICE, PLAN -> {
        if (named) {
          throw new IllegalArgumentException(document + " is no source of a figure without one");
        }
      }
    }
  }

  static Cited read(String document, String edition, String place) {
    return new Cited(document, edition, place, Flag.READ);
  }

  static Cited secondHand(String document, String edition, String place) {
    return new Cited(document, edition, place, Flag.READ_SECOND_HAND);
  }

  static Cited memory(String document, String edition, String place) {
    return new Cited(document, edition, place, Flag.MEMORY);
  }

  static Cited practice() {
    return new Cited("", "", "", Flag.PRACTICE);
  }

  static Cited ownChoice() {
    return new Cited("", "", "", Flag.OWN_CHOICE);
  }

  /** What the plan's user chose or locked. */
  public static Cited plan() {
    return new Cited("", "", "", Flag.PLAN);
  }

  /** Document, edition and place with commas between; empty where there is no document. */
  public String reference() {
    List<String> parts = new ArrayList<>(List.of(document, edition, place));
    parts.removeIf(String::isBlank);
    return String.join(", ", parts);
  }
}
