package org.jointwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.jointwright.file.PlanReading.ReadPlan;
import org.jointwright.file.PlanReading.Refused;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonFault;
import org.jointwright.file.json.JsonReader;

/** Reads plan files. Whatever the input, the answer is a plan or a list of problems. */
public final class PlanReader {
  /** A plan of more bytes than this is none. */
  private static final int MOST_BYTES = 16 * 1024 * 1024;

  private PlanReader() {}

  /** The plan in a file. */
  public static PlanReading read(Path file) {
    return read(file, PlanReader::read);
  }

  /** What one way of reading comes to on what a file holds. */
  public interface Way {
    /** Reads a stream to its end. */
    PlanReading read(InputStream in) throws IOException;
  }

  /** The plan in a file that is read in a way of its own. */
  public static PlanReading read(Path file, Way way) {
    if (Files.isDirectory(file)) {
      return refused("file.isAFolder");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return way.read(in);
    } catch (NoSuchFileException e) {
      return refused("file.notThere");
    } catch (IOException e) {
      return refused("file.unreadable");
    }
  }

  /** The plan that a stream gives; the stream is read to its end, not closed. */
  public static PlanReading read(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_BYTES + 1);
    return bytes.length > MOST_BYTES
        ? refused("file.tooBig", MOST_BYTES / (1024 * 1024))
        : read(bytes);
  }

  /** The plan in the bytes of a file. */
  public static PlanReading read(byte[] bytes) {
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
    } catch (CharacterCodingException e) {
      return refused("file.notUtf8");
    }
    // Some editors put a mark before UTF-8; it says nothing.
    return read(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  /** The plan in the text of a file. */
  public static PlanReading read(String text) {
    Json json;
    try {
      json = JsonReader.read(text);
    } catch (JsonFault fault) {
      return new Refused(List.of(remark(fault)));
    }
    Reading reading = new Reading();
    return DocumentReader.read(reading, json)
        .<PlanReading>map(plan -> new ReadPlan(plan, reading.repairs()))
        .orElseGet(() -> new Refused(reading.problems()));
  }

  private static Refused refused(String key, Object... arguments) {
    return new Refused(List.of(Remark.whole(key, arguments)));
  }

  private static Remark remark(JsonFault fault) {
    String key =
        switch (fault.kind()) {
          case EMPTY -> "file.empty";
          case GRAMMAR -> "file.notJson";
          case ENDS_EARLY -> "file.endsEarly";
          case TRAILING -> "file.trailing";
          case TOO_DEEP -> "file.tooDeep";
          case TOO_LONG -> "file.tooLong";
          case TWICE -> "file.keyTwice";
          case NOT_FINITE -> "file.notFinite";
        };
    String column = Integer.toString(fault.column());
    return new Remark(fault.path(), fault.line(), key, List.of(fault.near(), column));
  }
}
