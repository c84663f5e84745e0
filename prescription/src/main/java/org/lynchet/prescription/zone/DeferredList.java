package org.lynchet.prescription.zone;

import java.io.Serial;
import java.io.Serializable;
import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes a list when something of it is first asked for: passes take as long to draw and measure as
 * zones do, and not everyone who wants zones wants passes.
 *
 * <p>What makes it must be a pure function, so that it does not matter when it is made. It is made
 * once, whichever thread asks; a list that is serialised is made before, and comes back as a plain
 * one. It cannot be changed.
 */
final class DeferredList<E> extends AbstractList<E> implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Null once the list has been made. */
  private transient @Nullable Supplier<List<E>> maker;

  private transient volatile @Nullable List<E> made;

  DeferredList(Supplier<List<E>> maker) {
    this.maker = maker;
  }

  /** A copy that cannot be changed; of a deferred list itself, which stays deferred. */
  static <E> List<E> copyOf(List<E> list) {
    return list instanceof DeferredList ? list : List.copyOf(list);
  }

  @Override
  public E get(int index) {
    return made().get(index);
  }

  @Override
  public int size() {
    return made().size();
  }

  private List<E> made() {
    List<E> list = made;
    return list == null ? make() : list;
  }

  private synchronized List<E> make() {
    List<E> list = made;
    if (list == null) {
      list = List.copyOf(Objects.requireNonNull(maker).get());
      made = list;
      maker = null;
    }
    return list;
  }

  @Serial
  private Object writeReplace() {
    return made();
  }
}
