package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Draws outlines of fields by chance, in metres, some hundred metres across. */
final class RandomOutlines {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private RandomOutlines() {}

  /** A star, a star with a star-shaped hole, or a comb; turned, and somewhere beside the origin. */
  static Geometry any(Random random) {
    Geometry drawn =
        switch (random.nextInt(3)) {
          case 0 -> star(random, 200);
          case 1 -> star(random, 200).difference(star(random, 55));
          default -> comb(random);
        };
    AffineTransformation place =
        AffineTransformation.rotationInstance(2 * Math.PI * random.nextDouble())
            .translate(200 * random.nextDouble(), 200 * random.nextDouble());
    return place.transform(drawn);
  }

  /** Seen whole from its middle, nowhere nearer to it than 0.3 of the radius; concave. */
  private static Geometry star(Random random, double radius) {
    int size = 5 + random.nextInt(40);
    List<Coordinate> ring = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / size;
      double r = radius * (0.3 + 0.7 * random.nextDouble());
      ring.add(new Coordinate(r * Math.cos(angle), r * Math.sin(angle)));
    }
    return closed(ring);
  }

  /** A back 30 m thick with teeth of different lengths. */
  private static Geometry comb(Random random) {
    List<Coordinate> ring = new ArrayList<>();
    ring.add(new Coordinate(0, -30));
    double x = 0;
    for (int teeth = 3 + random.nextInt(8); teeth > 0; teeth--) {
      double height = 20 + 200 * random.nextDouble();
      double width = 3 + 20 * random.nextDouble();
      ring.add(new Coordinate(x, 0));
      ring.add(new Coordinate(x, height));
      ring.add(new Coordinate(x + width, height));
      ring.add(new Coordinate(x + width, 0));
      x += width + 3 + 20 * random.nextDouble();
    }
    ring.add(new Coordinate(x, 0));
    ring.add(new Coordinate(x, -30));
    return closed(ring);
  }

  private static Geometry closed(List<Coordinate> ring) {
    ring.add(ring.get(0).copy());
    return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
  }
}
