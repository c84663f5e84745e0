package org.lynchet.prescription.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;

/** Order and faults do not depend on which thread is first. */
class ParallelStepsTest {

  @Test
  void resultsComeInTheOrderOfThings() throws Exception {
    List<Integer> heard = new ArrayList<>();
    CountDownLatch second = new CountDownLatch(1);
    try (ParallelSteps steps = new ParallelSteps(2, 3, (done, all) -> heard.add(10 * done + all))) {
      List<String> results =
          steps.each(
              List.of(1, 2, 3),
              thing -> {
                if (thing == 1) {
                  await(second);
                } else {
                  second.countDown();
                }
                return "result " + thing;
              });
      assertThat(results).containsExactly("result 1", "result 2", "result 3");
    }
    assertThat(heard).containsExactly(13, 23, 33);
  }

  @Test
  void theFaultOfTheFirstThingIsTold() {
    CountDownLatch second = new CountDownLatch(1);
    try (ParallelSteps steps = new ParallelSteps(2, 2, Progress.NONE)) {
      assertThatThrownBy(
              () ->
                  steps.each(
                      List.of(1, 2),
                      thing -> {
                        if (thing == 1) {
                          await(second);
                        } else {
                          second.countDown();
                        }
                        throw new RejectedException(
                            List.of(new Fault("fault " + thing, "here", "none", "mend it")));
                      }))
          .isInstanceOfSatisfying(
              RejectedException.class,
              rejected -> assertThat(rejected.faults().get(0).what()).isEqualTo("fault 1"));
    }
  }

  @Test
  void aFaultOfTheProgramStaysOne() {
    try (ParallelSteps steps = new ParallelSteps(1, 1, Progress.NONE)) {
      assertThatThrownBy(
              () ->
                  steps.each(
                      List.of(1),
                      thing -> {
                        throw new IllegalArgumentException("ours");
                      }))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("ours");
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
