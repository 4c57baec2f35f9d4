package dev.flangewright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class H2AddressTest {

  @Test
  void the_database_in_memory_keeps_the_settings_of_the_file() {
    assertThat(
            TestDatabase.h2InMemory(
                "jdbc:h2:file:./data/flangewright;MODE=STRICT;WRITE_DELAY=0", "shop"))
        .isEqualTo("jdbc:h2:mem:shop;MODE=STRICT;WRITE_DELAY=0;DB_CLOSE_DELAY=-1");
  }

  @Test
  void what_only_a_file_can_do_is_left_out() {
    assertThat(
            TestDatabase.h2InMemory("jdbc:h2:file:./data/flangewright;AUTO_SERVER=TRUE;", "shop"))
        .isEqualTo("jdbc:h2:mem:shop;DB_CLOSE_DELAY=-1");
  }

  @Test
  void settings_of_another_engine_are_not_taken_over() {
    assertThat(TestDatabase.h2InMemory("jdbc:postgresql://db/shop?ssl=true;x=y", "shop"))
        .isEqualTo("jdbc:h2:mem:shop;DB_CLOSE_DELAY=-1");
  }
}
