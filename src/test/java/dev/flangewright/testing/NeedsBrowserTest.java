package dev.flangewright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NeedsBrowserTest {

  @Test
  void without_a_browser_the_test_is_skipped_and_names_the_package() {
    var result = BrowserCondition.evaluate(Optional.empty(), false);

    assertThat(result.isDisabled()).isTrue();
    assertThat(result.getReason()).hasValueSatisfying(r -> assertThat(r).contains("'chromium'"));
  }

  @Test
  void where_browser_tests_must_run_a_missing_browser_is_a_failure() {
    assertThatThrownBy(() -> BrowserCondition.evaluate(Optional.empty(), true))
        .hasMessageContaining("'chromium'");
  }

  @Test
  void the_program_named_in_the_environment_comes_first(@TempDir Path folder) throws IOException {
    Path program = executable(folder.resolve("my-browser"));

    assertThat(Chromium.find(program.toString(), null)).contains(program);
    assertThat(BrowserCondition.evaluate(Optional.of(program), true).isDisabled()).isFalse();
  }

  @Test
  void a_named_program_that_is_not_there_is_not_replaced_by_another(@TempDir Path folder) {
    assertThat(Chromium.find(folder.resolve("gone").toString(), null)).isEmpty();
  }

  private static Path executable(Path file) throws IOException {
    Files.createFile(file);
    assertThat(file.toFile().setExecutable(true)).isTrue();
    return file;
  }
}
