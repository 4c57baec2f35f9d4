package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurrentPlaceTest {

  @ParameterizedTest
  @CsvSource({
    "/, overview",
    "/builds, builds",
    "/builds/7/parts, parts",
    "/builds/7/parts/12, parts",
    "/builds/7/bench, bench",
    "/parts/12/pieces/3, bench",
    "/builds/7/blocks, blocks",
    "/block-sets/4, blocks",
    "/builds/7/stock, stock",
    "/batches/4/edit, stock",
    "/builds/7/import, import",
    "/people/new, people",
    "/sign-in, ''"
  })
  void a_page_is_marked_under_the_link_that_leads_to_it(String address, String place) {
    assertThat(CurrentPlace.of(address)).isEqualTo(place);
  }
}
