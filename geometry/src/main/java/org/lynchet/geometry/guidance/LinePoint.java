package org.lynchet.geometry.guidance;

/**
 * A point of a line of constant offset.
 *
 * @param x in the frame
 * @param y in the frame
 * @param alongMetres where along the curve it lies
 */
public record LinePoint(double x, double y, double alongMetres) {}
