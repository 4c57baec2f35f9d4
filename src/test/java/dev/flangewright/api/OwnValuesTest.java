package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.forming.ShopValue;
import dev.flangewright.parts.Parts;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** A build's own metals and shop values over the wire. */
class OwnValuesTest extends ApiTest {

  @Autowired Parts parts;

  @Test
  void a_certificate_is_entered_listed_and_answers_in_the_figures() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    long build = parts.whole(part).orElseThrow().build().id();
    String body =
        """
        {"alloy":"2024","temper":"T3","certificate":"Z-1","uniformStrain":0.14,"anisotropy":0.7}
        """;
    send("fitter", "/builds/" + build + "/metals", body).andExpect(status().isForbidden());
    send("lead", "/builds/" + build + "/metals", body)
        .andExpect(status().isCreated())
        .andExpect(jsonPath("$.values.uniformStrain").value(0.14))
        .andExpect(jsonPath("$.enteredBy").value("lead"));
    send("lead", "/builds/" + build + "/metals", body).andExpect(status().isConflict());
    read("guest", "/builds/" + build + "/metals")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.length()").value(1))
        .andExpect(jsonPath("$[0].withdrawn").value(false));

    JsonNode figures = body(read("guest", "/parts/" + part + "/forming"));
    JsonNode uniform = figures.get("metal").get("uniformStrain");
    assertThat(uniform.get("value").asDouble()).isEqualTo(0.14);
    assertThat(uniform.get("knownBy").asString()).isEqualTo("certificate");
    assertThat(uniform.get("source").asString()).startsWith("certificate Z-1, entered by lead on");
    assertThat(figures.get("anisotropy").asDouble()).isEqualTo(0.7);
    assertThat(figures.at("/metal/proofMpa/source").asString()).doesNotContain("Z-1");
  }

  @Test
  void what_a_certificate_cannot_state_is_refused_with_its_field() throws Exception {
    long build = workshop.build().id();
    send(
            "lead",
            "/builds/" + build + "/metals",
            """
            {"alloy":"2024","temper":"T3","certificate":"Z-1","youngMpa":70}
            """)
        .andExpect(status().isUnprocessableContent())
        .andExpect(jsonPath("$.field").value("youngMpa"));
    send("lead", "/builds/" + build + "/metals", "{\"alloy\":\"2024\"}")
        .andExpect(status().isBadRequest());
    read("guest", "/builds/999999/metals").andExpect(status().isNotFound());
    read("guest", "/builds/999999/shop-values").andExpect(status().isNotFound());
  }

  @Test
  void the_figures_name_every_shop_value_with_its_source() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    JsonNode values = body(read("guest", "/parts/" + part + "/forming")).get("shopValues");
    assertThat(values).hasSize(ShopValue.values().length);
    for (JsonNode value : values) {
      assertThat(value.get("own").asBoolean()).isFalse();
      assertThat(value.get("value")).isEqualTo(value.get("byDefault"));
      assertThat(value.get("source").asString()).isNotBlank();
    }
  }
}
