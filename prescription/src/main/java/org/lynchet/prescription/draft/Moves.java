package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/** Moves files and folders one after another; if one cannot be moved, takes all moves back. */
final class Moves {
  private record Move(Path from, Path to) {}

  private final List<Move> moves = new ArrayList<>();

  /** Adds a move; an empty folder that is where it goes is replaced. */
  void add(Path from, Path to) {
    moves.add(new Move(from, to));
  }

  /**
   * Makes all moves.
   *
   * @throws IOException of the move that was refused; what could not be taken back is suppressed in
   *     it
   */
  void run() throws IOException {
    int done = 0;
    try {
      for (Move move : moves) {
        move(move.from(), move.to());
        done++;
      }
    } catch (IOException e) {
      takeBack(moves.subList(0, done), e);
      throw e;
    }
  }

  private static void takeBack(List<Move> done, IOException because) {
    for (int i = done.size() - 1; i >= 0; i--) {
      try {
        move(done.get(i).to(), done.get(i).from());
      } catch (IOException e) {
        because.addSuppressed(e);
      }
    }
  }

  static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
