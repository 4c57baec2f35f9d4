package dev.flangewright.overview.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class DemoFilesTest {

  @Test
  void the_committed_files_are_what_the_loft_gives() throws IOException {
    assertThat(Files.readString(DemoFiles.FOLDER.resolve("register.csv")))
        .isEqualTo(DemoFiles.register());
    assertThat(Files.readString(DemoFiles.FOLDER.resolve("contours.csv")))
        .isEqualTo(DemoFiles.contours());
  }

  @Test
  void the_hull_has_sixty_two_segments_on_thirteen_frames() {
    assertThat(TidewingHull.FRAMES).hasSize(13);
    assertThat(TidewingHull.segments()).hasSize(62);
    assertThat(TidewingHull.segments()).extracting(Segment::partNumber).doesNotHaveDuplicates();
  }
}
