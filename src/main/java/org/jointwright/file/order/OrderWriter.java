package org.jointwright.file.order;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonPrinter;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.Liquid;
import org.jointwright.measure.UnitSystem;
import org.jointwright.measure.Volume;
import org.jointwright.measure.VolumeUnit;
import org.jointwright.measure.Weight;
import org.jointwright.takeoff.Amount;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.MixLine;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;

/** Writes what a plan takes: figures for programs, and beside each the words for people. */
public final class OrderWriter {
  private static final int DECIMALS = 4;

  private final OrderWords said;
  private final UnitSystem system;

  private OrderWriter(Words words) {
    said = new OrderWords(words);
    system = words.units();
  }

  /** The order as the text of a file. */
  public static String write(Takeoff takeoff, Words words) {
    OrderWriter writer = new OrderWriter(words);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("mix", writer.mix(takeoff.mix()));
    members.put("lines", Json.of(takeoff.lines().stream().map(writer::line).toList()));
    return JsonPrinter.pretty(Json.of(members));
  }

  private Json mix(MixLine mix) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("strength", figure(mix.strength()));
    mix.air().ifPresent(a -> members.put("air", figure(a)));
    members.put("stone", figure(mix.stone().inches()));
    members.put("slump", figure(mix.slump().inches()));
    mix.water().ifPresent(w -> members.put("water", figure(w)));
    members.put("fiber", Json.of(mix.fiber()));
    members.put("exposure", Json.of(word(mix.exposure())));
    members.put("said", Json.of(said.mix(mix)));
    return Json.of(members);
  }

  private Json line(Line line) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("group", Json.of(word(line.item().group())));
    members.put("item", Json.of(word(line.item())));
    members.put("name", Json.of(said.name(line)));
    amount(line.amount(), members);
    members.put("said", Json.of(said.amount(line)));
    members.put("how", texts(said.how(line)));
    if (!line.sources().isEmpty()) {
      members.put("sources", Json.of(said.sources(line)));
    }
    return Json.of(members);
  }

  private void amount(Amount amount, Map<String, Json> members) {
    boolean metric = system == UnitSystem.METRIC;
    switch (amount) {
      case Amount.OfVolume(Volume v) ->
          put(members, v.in(VolumeUnit.of(system)), VolumeUnit.of(system).symbol());
      case Amount.OfWeight(Weight w) ->
          put(members, metric ? w.tonnes() : w.tons(), metric ? "t" : "ton");
      case Amount.OfLength(Length l) ->
          put(members, metric ? l.in(LengthUnit.METRE) : l.feet(), metric ? "m" : "ft");
      case Amount.OfArea(Area a) ->
          put(members, metric ? a.squareMetres() : a.squareFeet(), metric ? "m2" : "ft2");
      case Amount.OfLiquid(Liquid l) ->
          put(members, metric ? l.litres() : l.gallons(), metric ? "L" : "gal");
      case Amount.Pieces(Integer n) -> put(members, n, "pieces");
    }
  }

  private static void put(Map<String, Json> members, double value, String unit) {
    members.put("amount", figure(value));
    members.put("unit", Json.of(unit));
  }

  private static Json figure(double value) {
    return new Json.Figure(Decimals.rounded(value, DECIMALS), 0);
  }

  private static Json texts(List<String> texts) {
    return Json.of(texts.stream().map(Json::of).toList());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
