package org.jointwright.layout.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jointwright.practice.Cost;

/**
 * The cheapest cover by the rules' cost, in which uneven panels make each foot dearer. That is not
 * linear, so the numbers of panels and their unevenness are split into ranges; in each the least
 * that it can be stands for it, which bounds the range from below. Ranges are split, the most
 * hopeful first, until none can hold anything cheaper than what is known.
 */
final class Bands {
  /** Where the ranges of unevenness end, more than any slab has. */
  private static final double MOST_UNEVEN = 10;

  private static final double FREE = Cost.EVEN.value();
  private static final double UNEVEN = Cost.UNEVEN.value();
  private static final double TEE = Cost.TEE.value().inches() / 12;

  /** Bounds within this share of the cheapest known count as reaching it. */
  private static final double NEAR = 0.001;

  /** Narrower ranges of unevenness are not split. */
  private static final double NARROW = 0.002;

  private final Mesh mesh;
  private final List<Tile> tiles;
  private final Tries tries;
  private final double area;
  private final double shortest;
  private final PriorityQueue<Band> open =
      new PriorityQueue<>(Comparator.comparingDouble(Band::bound).thenComparingInt(Band::order));
  private double known;
  private double settled = Double.POSITIVE_INFINITY;
  private int made;

  /**
   * Numbers of panels and ranges of their coefficient of variation.
   *
   * @param bound no cover in it costs less, ft
   * @param order counts bands as they are made
   * @param cover what its bound comes from
   */
  private record Band(
      int fewest, int most, double even, double uneven, double bound, int order, List<Tile> cover) {
    Band {
      cover = List.copyOf(cover);
    }
  }

  Bands(Mesh mesh, List<Tile> tiles, Tries tries) {
    this.mesh = mesh;
    this.tiles = tiles;
    this.tries = tries;
    this.area = mesh.area();
    // Half the way round a tile is twice the root of its area at least.
    double largest = tiles.stream().mapToDouble(Tile::area).max().orElse(area);
    this.shortest = 2 * area / Math.sqrt(largest) - mesh.frame().edge() / 2;
  }

  /**
   * What the cheapest cover costs.
   *
   * @param bound no cover costs less, ft; at most {@code known}
   * @param known the cheapest one met, or what was asked to be beaten, ft
   */
  record Cheapest(double bound, double known) {}

  /** The cheapest cover, if it costs less than {@code below}, ft. */
  Cheapest find(double below) {
    known = below;
    double least = tiles.stream().mapToDouble(Tile::area).min().orElse(area);
    add(1, (int) Math.ceil(area / least), 0, MOST_UNEVEN, 0);
    while (!open.isEmpty() && open.peek().bound() < known * (1 - NEAR)) {
      Band b = open.poll();
      double found = unevenness(b.cover());
      int n = b.cover().size();
      if (b.cover().isEmpty() || (b.fewest() == b.most() && b.uneven() - b.even() < NARROW)) {
        settled = Math.min(settled, b.bound());
      } else if (b.fewest() < b.most()) {
        add(b.fewest(), n - 1, b.even(), b.uneven(), b.bound());
        add(n, n, b.even(), b.uneven(), b.bound());
        add(n + 1, b.most(), b.even(), b.uneven(), b.bound());
      } else {
        double middle = (Math.max(FREE, b.even()) + Math.min(found, b.uneven())) / 2;
        add(n, n, b.even(), middle, b.bound());
        add(n, n, middle, b.uneven(), b.bound());
      }
    }
    double bound = open.isEmpty() ? known : Math.min(known, open.peek().bound());
    return new Cheapest(Math.min(bound, settled), known);
  }

  /**
   * Bounds a range and keeps it open.
   *
   * @param bound what bounds the range that it is a part of, and so it too, ft
   */
  private void add(int fewest, int most, double even, double uneven, double bound) {
    if (fewest > most || even >= uneven) {
      return;
    }
    double weight = 1 + UNEVEN * Math.max(0, even - FREE);
    double squares = area * area * (1 + uneven * uneven) / fewest;
    Program program = new Program(mesh, tiles, new Ask(weight, fewest, most, squares));
    Branching.Found found = new Branching(tiles, program::solve, tries).find(known);
    if (!found.cover().isEmpty()) {
      known = Math.min(known, cost(found.cover()));
    }
    double least = Math.max(bound, found.bound());
    if (least < known) {
      double cap = Math.min(uneven, mostUneven(weight, found.bound()));
      open.add(new Band(fewest, most, even, cap, least, made++, found.cover()));
    }
  }

  /**
   * How uneven a cover can be that costs less than what is known, where a foot weighs {@code
   * weight} and nothing costs less than {@code bound} even so.
   */
  private double mostUneven(double weight, double bound) {
    if (shortest <= 0) {
      return MOST_UNEVEN;
    }
    double dearer = weight - 1 + (known - bound) / shortest;
    return FREE + dearer / UNEVEN;
  }

  /** The population's coefficient of variation of the tiles' areas. */
  private double unevenness(List<Tile> cover) {
    double squares = cover.stream().mapToDouble(t -> t.area() * t.area()).sum();
    return Math.sqrt(Math.max(0, cover.size() * squares / (area * area) - 1));
  }

  /** The rules' cost, ft. */
  double cost(List<Tile> cover) {
    double length = cover.stream().mapToDouble(Tile::halfRound).sum() - mesh.frame().edge() / 2;
    double uneven = UNEVEN * Math.max(0, unevenness(cover) - FREE);
    return length * (1 + uneven) + TEE * tees(cover);
  }

  /** Nodes inside the slab where two corners meet. */
  private long tees(List<Tile> cover) {
    List<List<Integer>> nodes = new ArrayList<>();
    for (Tile t : cover) {
      for (int x : new int[] {t.left(), t.right()}) {
        for (int y : new int[] {t.low(), t.high()}) {
          nodes.add(List.of(x, y));
        }
      }
    }
    return nodes.stream()
        .distinct()
        .filter(n -> mesh.isInside(n.getFirst(), n.getLast()) && count(nodes, n) == 2)
        .count();
  }

  private static long count(List<List<Integer>> nodes, List<Integer> node) {
    return nodes.stream().filter(node::equals).count();
  }
}
