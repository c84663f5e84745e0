package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * An order in which the passes of one planter can be driven.
 *
 * @param kind how it goes
 * @param jump how many passes further the next one is
 */
public record PassOrder(Kind kind, int jump) implements Serializable {
  /** Jumps beyond this are not tried. */
  private static final int MOST_JUMP = 8;

  /** How an order goes. */
  public enum Kind {
    /** Each pass after its left neighbour, back and forth. */
    IN_SEQUENCE,
    /** Every so manieth pass, then back over those left out, and so on. */
    EVERY_NTH,
    /** Land by land, each from its left half to its right half and back. */
    IN_LANDS,
    /** Each pass after its left neighbour, all along the AB line, the way back driven empty. */
    ONE_WAY
  }

  static final PassOrder IN_SEQUENCE = new PassOrder(Kind.IN_SEQUENCE, 1);
  static final PassOrder ONE_WAY = new PassOrder(Kind.ONE_WAY, 1);

  /** The back and forth orders of so many passes, those that jump least first. */
  static List<PassOrder> backAndForth(int passes) {
    List<PassOrder> orders = new ArrayList<>();
    orders.add(IN_SEQUENCE);
    for (int jump = 2; jump <= MOST_JUMP && jump < passes; jump++) {
      orders.add(new PassOrder(Kind.EVERY_NTH, jump));
      if (passes >= 2 * jump) {
        orders.add(new PassOrder(Kind.IN_LANDS, jump));
      }
    }
    return orders;
  }

  /** The order in words. */
  public String words() {
    return switch (kind) {
      case IN_SEQUENCE -> "in sequence, back and forth";
      case EVERY_NTH ->
          "every " + jump + (jump == 2 ? "nd" : jump == 3 ? "rd" : "th") + " pass, then the others";
      case IN_LANDS -> "in lands of about " + 2 * jump + " passes, half to half";
      case ONE_WAY -> "all from A to B, the way back driven empty";
    };
  }

  /** Drives passes, given left to right, in this order; the first along the AB line. */
  List<Trip> drive(List<PlantedPass> passes) {
    List<Trip> trips = new ArrayList<>();
    Direction direction = Direction.ALONG;
    for (int place : places(passes.size())) {
      trips.add(new Trip(passes.get(place), direction));
      direction = kind == Kind.ONE_WAY ? direction : direction.opposite();
    }
    return trips;
  }

  /** The places of the passes, from 0 at the left, in the order of driving. */
  List<Integer> places(int passes) {
    List<Integer> places = new ArrayList<>();
    if (kind == Kind.IN_LANDS) {
      addLands(passes, places);
      return places;
    }
    for (int first = 0; first < jump; first++) {
      List<Integer> round = new ArrayList<>();
      for (int place = first; place < passes; place += jump) {
        round.add(first % 2 == 0 ? round.size() : 0, place);
      }
      places.addAll(round);
    }
    return places;
  }

  /**
   * Lands of nearly the same size. A land begins in the half that the land before did not end in,
   * so that the way between lands is no narrow turn.
   */
  private void addLands(int passes, List<Integer> places) {
    int lands = Math.max(1, passes / (2 * jump));
    boolean fromLeft = true;
    for (int land = 0; land < lands; land++) {
      int begin = passes * land / lands;
      int end = passes * (land + 1) / lands;
      int middle = fromLeft ? begin + (end - begin + 1) / 2 : begin + (end - begin) / 2;
      for (int i = 0; begin + i < middle || middle + i < end; i++) {
        addIfBelow(fromLeft ? begin + i : middle + i, fromLeft ? middle : end, places);
        addIfBelow(fromLeft ? middle + i : begin + i, fromLeft ? end : middle, places);
      }
      boolean endsRight = places.get(places.size() - 1) >= middle;
      fromLeft = !endsRight;
    }
  }

  private static void addIfBelow(int place, int end, List<Integer> places) {
    if (place < end) {
      places.add(place);
    }
  }
}
