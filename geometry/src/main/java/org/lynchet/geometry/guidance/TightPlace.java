package org.lynchet.geometry.guidance;

/**
 * Where a curve is too tight for the field.
 *
 * @param offsetMetres the offset, positive to the right, beyond which lines have a corner there
 * @param longitudeDegrees where the corner first lies
 * @param latitudeDegrees where the corner first lies
 * @param turnDegrees how far the line turns in it
 */
public record TightPlace(
    double offsetMetres, double longitudeDegrees, double latitudeDegrees, double turnDegrees) {}
