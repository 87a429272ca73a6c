package org.jointwright.file;

import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.picture.Picture;
import org.jointwright.picture.PictureException;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Photo;
import org.jointwright.shape.Point;

/** Reads and writes the photo beneath. Its bytes stand in the file, as lines of Base64. */
final class PhotoFile {
  /** Bytes in a line: a multiple of three, so that each line is whole in itself. */
  private static final int LINE = 3072;

  private final Reading reading;
  private final Fields fields;

  private PhotoFile(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
  }

  /** The photo; empty where there is none that can be read, which is reported. */
  static Optional<Photo> read(Reading reading, Fields fields) {
    return new PhotoFile(reading, fields).read();
  }

  private Optional<Photo> read() {
    String name = fields.text("name");
    Optional<Point> middle = middle();
    fields.require("width", "\"40 ft\"");
    Optional<Length> width = fields.length("width", Bounds.PHOTO);
    double turn = fields.number("turn", -360, 360).orElse(0);
    double opacity = fields.number("opacity", 0, 1).orElse(Photo.USUAL_OPACITY);
    Optional<Picture> picture = picture();
    if (middle.isEmpty() || width.isEmpty() || picture.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Photo(
            name, picture.get(), middle.get(), width.get().inches(), turn, opacity, fields.kept()));
  }

  private Optional<Point> middle() {
    Json json = fields.need("middle", "[x, y]");
    if (json == null) {
      return Optional.empty();
    }
    Map<String, Kept.Typed> typed = new LinkedHashMap<>();
    Optional<Point> point =
        ReadVertex.point(reading, json, fields.place().key("middle"), "middle", typed);
    fields.keepTyped(typed);
    return point;
  }

  private Optional<Picture> picture() {
    Json json = fields.need("picture", "[\"…\"]");
    if (json == null) {
      return Optional.empty();
    }
    Place place = fields.place().key("picture");
    Optional<String> text = text(json, place);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Picture.of(Base64.getDecoder().decode(text.get())));
    } catch (IllegalArgumentException e) {
      reading.problem(place, json, "file.photoNoBase64");
    } catch (PictureException e) {
      reading.problem(place, json, key(e.why()), Picture.MOST_BYTES / (1024 * 1024));
    }
    return Optional.empty();
  }

  private static String key(PictureException.Why why) {
    return switch (why) {
      case NO_PICTURE -> "file.photoNoPicture";
      case BROKEN -> "file.photoBroken";
      case TOO_BIG -> "file.photoTooBig";
      case TOO_MANY_PIXELS -> "file.photoTooManyPixels";
    };
  }

  /** One text, or a list of texts that follow each other. */
  private Optional<String> text(Json json, Place place) {
    if (json instanceof Json.Text t) {
      return Optional.of(t.value());
    }
    if (!(json instanceof Json.Items items)) {
      reading.problem(place, json, "file.photoNoBase64");
      return Optional.empty();
    }
    StringBuilder all = new StringBuilder();
    for (Json line : items.items()) {
      if (!(line instanceof Json.Text t)) {
        reading.problem(place, line, "file.photoNoBase64");
        return Optional.empty();
      }
      all.append(t.value());
    }
    return Optional.of(all.toString());
  }

  static Json json(Photo photo, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    if (!photo.name().isEmpty()) {
      members.put("name", Json.of(photo.name()));
    }
    members.put("middle", JointPath.point(photo.kept(), "middle", photo.middle(), unit));
    members.put("width", Lengths.spacing(photo.kept(), "width", photo.width(), unit));
    if (photo.turn() != 0) {
      members.put("turn", new Json.Figure(Decimals.number(photo.turn()), 0));
    }
    members.put("opacity", new Json.Figure(Decimals.number(photo.opacity()), 0));
    members.put("picture", lines(photo.picture().bytes()));
    PlanWriter.addUnknown(photo.kept(), members);
    return Json.of(members);
  }

  private static Json lines(byte[] bytes) {
    Base64.Encoder encoder = Base64.getEncoder();
    List<Json> lines = new ArrayList<>();
    for (int from = 0; from < bytes.length; from += LINE) {
      byte[] part = java.util.Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + LINE));
      lines.add(Json.of(encoder.encodeToString(part)));
    }
    return Json.of(lines);
  }
}
