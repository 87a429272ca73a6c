package org.jointwright.sheet.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What sheets were printed from and by: it goes into their files, so that a sheet can be opened
 * again.
 *
 * @param job the name of the job; empty where it has none
 * @param program the program's name and version
 * @param plan the plan, just as its file has it
 */
public record Origin(String job, String program, String plan) {
  /**
   * What tells whether a plan was changed since: a figure of all its signs but white space, which
   * other programs fold as they like.
   */
  public static String stamp(String plan) {
    try {
      byte[] signs = plan.replaceAll("\\s+", "").getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(signs));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
