package org.lynchet.integration.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.TestAbortedException;

class ChildTest {
  @TempDir Path folder;

  @Test
  void keepsExitCodeAndBothOutputs() throws IOException, InterruptedException {
    Tools.assumeInstalled("sh");
    Run run =
        Child.of(folder, "sh", "-c", "echo $CROP; echo früh >&2; exit 3")
            .withEnvironment("CROP", "corn")
            .run();
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEqualTo("corn\n");
    assertThat(run.err()).isEqualTo("früh\n");
    assertThatThrownBy(run::outOrThrow).hasMessageContaining("früh").hasMessageContaining("3");
  }

  @Test
  void endsWhatDoesNotEnd() {
    Tools.assumeInstalled("sleep");
    Child sleeper = Child.of(folder, "sleep", "600").withTimeOut(Duration.ofMillis(50));
    assertThatThrownBy(sleeper::run)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("sleep 600");
  }

  @Test
  void missingToolSkipsWithItsName() {
    assertThat(Tools.installed("no-such-tool-anywhere")).isFalse();
    assertThatThrownBy(() -> Tools.assumeInstalled("no-such-tool-anywhere"))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("no-such-tool-anywhere is not installed");
    assertThatThrownBy(() -> Tools.pythonWith("no_such_module"))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("no_such_module");
  }
}
