package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;

import jakarta.persistence.EntityManagerFactory;
import java.util.List;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** The register page by page, in a number of statements that does not grow with it. */
class RegisterReadingTest extends ApiTest {

  @Autowired EntityManagerFactory entities;

  @Test
  void pages_follow_one_another_without_gap_or_repeat() throws Exception {
    long build = workshop.buildOf(7);
    JsonNode first = body(read("guest", "/builds/" + build + "/parts?page=0&size=4"));
    JsonNode second = body(read("guest", "/builds/" + build + "/parts?page=1&size=4"));
    assertThat(first.get("totalItems").asLong()).isEqualTo(7);
    assertThat(first.get("totalPages").asInt()).isEqualTo(2);
    assertThat(numbers(first))
        .containsExactly("TW-F07-S001", "TW-F07-S002", "TW-F07-S003", "TW-F07-S004");
    assertThat(numbers(second)).containsExactly("TW-F07-S005", "TW-F07-S006", "TW-F07-S007");
    JsonNode line = first.get("items").get(0);
    assertThat(line.get("state").asString()).isEqualTo("NOT_BEGUN");
    assertThat(line.get("frame").asString()).isEqualTo("F7");
    assertThat(line.get("figures").get("flanges").get(0).get("gatherMm").asDouble()).isPositive();
    read("guest", "/builds/" + build + "/parts?page=2&size=4")
        .andExpect(jsonPath("$.items.length()").value(0));
  }

  @Test
  void a_longer_page_takes_no_more_statements() throws Exception {
    long few = statements("/builds/" + workshop.buildOf(5) + "/parts?size=500");
    long many = statements("/builds/" + workshop.buildOf(90) + "/parts?size=500");
    assertThat(many).isLessThanOrEqualTo(few);
  }

  private long statements(String address) throws Exception {
    Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
    statistics.setStatisticsEnabled(true);
    try {
      statistics.clear();
      body(read("guest", address));
      long count = statistics.getPrepareStatementCount();
      assertThat(count).isPositive();
      return count;
    } finally {
      statistics.setStatisticsEnabled(false);
    }
  }

  private static List<String> numbers(JsonNode page) {
    return page.get("items").valueStream().map(i -> i.get("partNumber").asString()).toList();
  }
}
