package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Makes bad plans of good ones, one thing wrong in each; the same for the same seed. */
final class PlanMutator {
  /** What is done to a plan. */
  enum Harm {
    CUT_OFF,
    KEY_RENAMED,
    WRONG_TYPE,
    OUT_OF_RANGE,
    CORNERS_SWAPPED,
    CORNER_ON_ITS_EDGE,
    OPENING_ON_A_CORNER,
    OPENING_ACROSS_THE_EDGE,
    NAME_TWICE,
    OBJECT_FAR_OFF,
    JOINT_OF_NOTHING,
    WORD_UNKNOWN,
    BRACKET_TOO_MANY
  }

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final List<String> NEEDED =
      List.of("format", "version", "slabs", "outline", "path", "ring", "at", "against", "shape");
  private static final List<String> WORDS =
      List.of("use", "finish", "kind", "against", "rule", "how", "unit");

  private final SplittableRandom random;

  PlanMutator(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** The text of a plan with that harm done; the plan as it was where it offers no place for it. */
  String harm(Harm harm, String plan) {
    ObjectNode root = (ObjectNode) JSON.readTree(plan);
    switch (harm) {
      case CUT_OFF -> {
        return plan.substring(0, random.nextInt(1, plan.strip().length()));
      }
      case BRACKET_TOO_MANY -> {
        int at = random.nextInt(2, plan.length());
        return plan.substring(0, at) + "]}{[".charAt(random.nextInt(4)) + plan.substring(at);
      }
      case KEY_RENAMED -> rename(root);
      case WRONG_TYPE -> retype(root);
      case OUT_OF_RANGE -> exceed(root);
      case CORNERS_SWAPPED -> swap(outline(root));
      case CORNER_ON_ITS_EDGE -> touch(outline(root));
      case OPENING_ON_A_CORNER -> open(root, 0);
      case OPENING_ACROSS_THE_EDGE -> open(root, random.nextDouble(0.2, 0.8));
      case NAME_TWICE -> doubleOne(root);
      case OBJECT_FAR_OFF -> banish(root);
      case JOINT_OF_NOTHING -> jointOfNothing(root);
      case WORD_UNKNOWN -> misspell(root);
    }
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
  }

  private static ArrayNode outline(ObjectNode root) {
    return (ArrayNode) root.get("slabs").get(0).get("outline");
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Every object in a tree, itself first. */
  private static List<ObjectNode> objects(JsonNode node) {
    List<ObjectNode> found = new ArrayList<>();
    if (node instanceof ObjectNode o) {
      found.add(o);
    }
    node.forEach(child -> found.addAll(objects(child)));
    return found;
  }

  private static List<ObjectNode> having(ObjectNode root, String key) {
    return objects(root).stream().filter(o -> o.has(key)).toList();
  }

  private void rename(ObjectNode root) {
    List<String> keys = NEEDED.stream().filter(k -> !having(root, k).isEmpty()).toList();
    String key = one(keys);
    ObjectNode at = one(having(root, key));
    at.set(key + "s", at.remove(key));
  }

  private void retype(ObjectNode root) {
    ObjectNode at = one(objects(root));
    List<String> keys = at.propertyNames().stream().filter(k -> !k.startsWith("z")).toList();
    if (!keys.isEmpty()) {
      String key = one(keys);
      switch (random.nextInt(4)) {
        case 0 -> at.put(key, -17.5);
        case 1 -> at.put(key, "perhaps");
        case 2 -> at.putArray(key).add("a").add(2);
        default -> at.putObject(key).put("of", "nothing");
      }
    }
  }

  private void exceed(ObjectNode root) {
    ArrayNode outline = outline(root);
    ObjectNode slab = (ObjectNode) root.get("slabs").get(0);
    switch (random.nextInt(6)) {
      case 0 -> slab.put("thickness", random.nextInt(26, 400) + " in");
      case 1 -> slab.put("thickness", -random.nextInt(1, 9));
      case 2 -> slab.putObject("jointing").put("maxSpacing", random.nextInt(1, 5) + " in");
      case 3 -> slab.putObject("jointing").put("aspect", random.nextInt(5, 90));
      case 4 ->
          slab.putObject("edges").put(Integer.toString(outline.size() + random.nextInt(9)), "open");
      default ->
          outline.set(random.nextInt(outline.size()), JSON.createArrayNode().add(1e9).add(0));
    }
  }

  private void swap(ArrayNode ring) {
    int i = random.nextInt(ring.size());
    int k = (i + 1 + random.nextInt(ring.size() - 1)) % ring.size();
    JsonNode kept = ring.get(i);
    ring.set(i, ring.get(k));
    ring.set(k, kept);
  }

  private static double[] place(JsonNode vertex) {
    JsonNode at = vertex.isObject() ? vertex.get("at") : vertex;
    return new double[] {at.get(0).asDouble(0), at.get(1).asDouble(0)};
  }

  /** A corner more, which stands on an edge that it is no end of. */
  private void touch(ArrayNode ring) {
    int n = ring.size();
    int i = random.nextInt(n);
    double[] a = place(ring.get((i + 2) % n));
    double[] b = place(ring.get((i + 3) % n));
    double t = random.nextDouble(0.3, 0.7);
    ring.insert(
        i + 1, JSON.createArrayNode().add(a[0] + t * (b[0] - a[0])).add(a[1] + t * (b[1] - a[1])));
  }

  /** An opening about a place on the first edge: its start, or a share of the way along. */
  private void open(ObjectNode root, double share) {
    ArrayNode ring = outline(root);
    if (!ring.get(0).path(0).isNumber() || !ring.get(1).path(0).isNumber()) {
      return;
    }
    double[] a = place(ring.get(0));
    double[] b = place(ring.get(1));
    double[] c = place(ring.get(2));
    double x = a[0] + share * (b[0] - a[0]);
    double y = a[1] + share * (b[1] - a[1]);
    double out = share == 0 ? 0 : 0.2;
    double wide = random.nextDouble(0.1, 0.2);
    double[][] corners = {{-out, -out}, {wide, -out}, {wide, wide}, {-out, wide}};
    ArrayNode opening = JSON.createArrayNode();
    for (double[] k : corners) {
      opening
          .addArray()
          .add(x + k[0] * (b[0] - a[0]) + k[1] * (c[0] - b[0]))
          .add(y + k[0] * (b[1] - a[1]) + k[1] * (c[1] - b[1]));
    }
    ObjectNode slab = (ObjectNode) root.get("slabs").get(0);
    ArrayNode openings =
        slab.has("openings") ? (ArrayNode) slab.get("openings") : slab.putArray("openings");
    openings.add(opening);
  }

  private void doubleOne(ObjectNode root) {
    List<ArrayNode> lists = new ArrayList<>();
    for (ObjectNode o : objects(root)) {
      for (String key : List.of("slabs", "fixed", "joints", "boxouts")) {
        if (o.get(key) instanceof ArrayNode list && !list.isEmpty()) {
          lists.add(list);
        }
      }
    }
    ArrayNode list = one(lists);
    JsonNode twin = list.get(0).deepCopy();
    if (twin instanceof ObjectNode o && !o.has("id") && !o.has("fixed")) {
      o.put("id", "twin");
      list.add(o.deepCopy());
    }
    list.add(twin);
  }

  private void banish(ObjectNode root) {
    double far = random.nextInt(300, 3000);
    root.putArray("fixed")
        .addObject()
        .put("id", "post")
        .put("slab", root.get("slabs").get(0).get("id").asString(""))
        .putObject("shape")
        .putObject("circle")
        .put("diameter", "8 in")
        .putArray("at")
        .add(-far)
        .add(far);
  }

  private void jointOfNothing(ObjectNode root) {
    ObjectNode slab = (ObjectNode) root.get("slabs").get(0);
    ArrayNode joints =
        slab.has("joints") ? (ArrayNode) slab.get("joints") : slab.putArray("joints");
    ArrayNode path = joints.addObject().put("kind", "contraction").putArray("path");
    double x = random.nextInt(1, 9);
    for (int n = random.nextInt(0, 4); n > 0; n--) {
      path.addArray().add(x).add(x);
    }
  }

  private void misspell(ObjectNode root) {
    List<String> keys = WORDS.stream().filter(k -> !having(root, k).isEmpty()).toList();
    String key = one(keys);
    ObjectNode at = one(having(root, key));
    String word = at.get(key).asString("");
    int cut = random.nextInt(word.length());
    at.put(key, word.substring(0, cut) + "q" + word.substring(Math.min(cut + 1, word.length())));
  }
}
