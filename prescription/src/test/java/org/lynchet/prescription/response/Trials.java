package org.lynchet.prescription.response;

import java.util.List;
import org.lynchet.prescription.response.Trial.Direction;
import org.lynchet.prescription.response.Trial.Part;

/** Lists published results by row position and by strip width, as read in their abstracts. */
final class Trials {
  private static final Direction EW = Direction.EAST_WEST;
  private static final Direction NS = Direction.NORTH_SOUTH;
  private static final Direction NOT_TOLD = Direction.NOT_TOLD;
  private static final String MINNESOTA = "J. Prod. Agric. 9:101 (1996), Minnesota, two crops";
  private static final String THREE = "same, three crops";
  private static final String PURDUE = "Purdue newsletter, 8-row strips, 1986-90";
  private static final String SMITH = "Smith and Carter (1998), corn and alfalfa";
  private static final String GROWERS = "growers' reports, 2011 (anecdote)";
  private static final String WHEAT = "beside wheat";
  private static final String ALFALFA = "alfalfa taken as soybean";

  private Trials() {}

  static List<Trial> all() {
    return List.of(
        new Trial(MINNESOTA, 6, 44, EW, Part.SOYBEAN_LAST, -34, -34, false, ""),
        new Trial(MINNESOTA, 6, 44, EW, Part.SOYBEAN_FIRST, -11, -11, false, ""),
        new Trial(MINNESOTA, 6, 44, NS, Part.SOYBEAN_LAST, -19, -19, false, ""),
        new Trial(MINNESOTA, 6, 44, NS, Part.SOYBEAN_FIRST, -21, -21, false, ""),
        new Trial(THREE, 6, 44, EW, Part.CORN_LAST, 18, 18, false, "wheat on the other side"),
        new Trial(THREE, 6, 44, EW, Part.CORN_FIRST, 6, 6, false, WHEAT),
        new Trial(THREE, 6, 44, NS, Part.CORN_FIRST, 27, 27, false, "wheat on the other side"),
        new Trial(THREE, 6, 44, NS, Part.CORN_LAST, 23, 23, false, WHEAT),
        new Trial(THREE, 6, 44, EW, Part.SOYBEAN_FIRST, -17, -17, false, "wheat beyond"),
        new Trial(THREE, 6, 44, NS, Part.SOYBEAN_LAST, -21, -21, false, "wheat beyond"),
        new Trial(PURDUE, 8, 40, NOT_TOLD, Part.CORN_OUTER, 25.8, 25.8, false, ""),
        new Trial(PURDUE, 8, 40, NOT_TOLD, Part.SOYBEAN_OUTER, -26.6, -26.6, false, ""),
        new Trial(SMITH + ", 40 ft", 16, 43, NOT_TOLD, Part.CORN, 3, 6, false, ALFALFA),
        new Trial(SMITH + ", 20 ft", 8, 43, NOT_TOLD, Part.CORN, 10, 11, false, ALFALFA),
        new Trial(SMITH + ", 10 ft", 4, 43, NOT_TOLD, Part.CORN, 10, 17, false, ALFALFA),
        new Trial(SMITH + ", 20 ft, drought", 8, 43, NOT_TOLD, Part.CORN, 0, 0, true, ALFALFA),
        new Trial(SMITH + ", 20 ft", 8, 43, NOT_TOLD, Part.LAND, 2, 8, false, ALFALFA),
        new Trial(GROWERS, 6, 42, NOT_TOLD, Part.CORN, 17.5, 17.5, false, "235 for 200 bu/ac"),
        new Trial(GROWERS, 12, 42, NOT_TOLD, Part.CORN, 7.5, 7.5, false, "215 for 200 bu/ac"),
        new Trial(GROWERS, 6, 42, NOT_TOLD, Part.SOYBEAN, -15, -10, false, "width not told"),
        new Trial("one grower (anecdote)", 8, 42, NOT_TOLD, Part.CORN, 10, 12, false, ""),
        new Trial("one grower (anecdote)", 8, 42, NOT_TOLD, Part.SOYBEAN, -5, -2, false, ""),
        new Trial("one grower (anecdote)", 5, 42, NOT_TOLD, Part.CORN, 30, 30, false, "4-6 rows"),
        new Trial(
            "one grower (anecdote)", 5, 42, NOT_TOLD, Part.SOYBEAN, -30, -30, false, "4-6 rows"));
  }
}
