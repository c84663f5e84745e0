package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fault.RejectedException;

/** Does the same to many things on all processors; results come in the order of the things. */
final class ParallelSteps implements AutoCloseable {
  private final ExecutorService threads;
  private final Progress progress;
  private final int all;
  private int done;

  /**
   * Starts threads, which end with {@link #close}.
   *
   * @param all how many steps there will be together
   */
  ParallelSteps(int processors, int all, Progress progress) {
    this.threads = Executors.newFixedThreadPool(processors);
    this.all = all;
    this.progress = progress;
  }

  /** One step. */
  @FunctionalInterface
  interface Step<T, R> {
    /** Does it. */
    R of(T thing) throws RejectedException;
  }

  /**
   * Does a step to each thing.
   *
   * @throws RejectedException that of the first thing that has one
   */
  <T, R> List<R> each(List<T> things, Step<T, R> step) throws RejectedException {
    List<Callable<R>> calls = new ArrayList<>();
    for (T thing : things) {
      calls.add(
          () -> {
            R result = step.of(thing);
            count();
            return result;
          });
    }
    List<R> results = new ArrayList<>();
    try {
      for (Future<R> future : threads.invokeAll(calls)) {
        results.add(future.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while comparing", e);
    } catch (ExecutionException e) {
      throw failure(e.getCause());
    }
    return results;
  }

  private static RejectedException failure(@Nullable Throwable cause) {
    if (cause instanceof RejectedException rejected) {
      return rejected;
    }
    if (cause instanceof RuntimeException fault) {
      throw fault;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw new IllegalStateException(cause);
  }

  private synchronized void count() {
    done++;
    progress.done(done, all);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
