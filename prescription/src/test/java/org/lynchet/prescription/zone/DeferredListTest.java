package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DeferredListTest {
  private final AtomicInteger times = new AtomicInteger();

  private final List<String> list =
      new DeferredList<>(
          () -> {
            times.incrementAndGet();
            return List.of("a", "b");
          });

  @Test
  void isMadeWhenAskedForAndOnce() {
    assertThat(DeferredList.copyOf(list)).isSameAs(list);
    assertThat(times).hasValue(0);
    IntStream.range(0, 100).parallel().forEach(i -> assertThat(list.get(1)).isEqualTo("b"));
    assertThat(list).isEqualTo(List.of("a", "b"));
    assertThat(times).hasValue(1);
  }

  @Test
  void comesBackAsAPlainList() throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(list);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(list).isNotInstanceOf(DeferredList.class);
    }
  }

  @Test
  void cannotBeChanged() {
    assertThatThrownBy(() -> list.set(0, "c")).isInstanceOf(UnsupportedOperationException.class);
  }
}
