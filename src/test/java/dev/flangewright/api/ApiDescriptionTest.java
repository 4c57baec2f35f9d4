package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tools.jackson.databind.JsonNode;

/** The description of the API says of every address what it does and what it answers. */
class ApiDescriptionTest extends ApiTest {

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  RequestMappingHandlerMapping addresses;

  @Test
  void every_address_is_described_with_its_answers() throws Exception {
    JsonNode paths = description().get("paths");
    List<RequestMappingInfo> ours =
        addresses.getHandlerMethods().entrySet().stream()
            .filter(ApiDescriptionTest::isOurs)
            .map(Map.Entry::getKey)
            .toList();
    assertThat(ours).hasSizeGreaterThanOrEqualTo(14);
    for (RequestMappingInfo address : ours) {
      String path = address.getPatternValues().iterator().next();
      String method =
          address
              .getMethodsCondition()
              .getMethods()
              .iterator()
              .next()
              .name()
              .toLowerCase(Locale.ROOT);
      JsonNode operation = paths.path(path).path(method);
      assertThat(operation.path("summary").asString("")).as(method + " " + path).isNotBlank();
      JsonNode answers = operation.get("responses");
      assertThat(answers.propertyNames()).as(path).contains("401");
      assertThat(answers.propertyNames()).as(path).anyMatch(code -> code.startsWith("2"));
      assertThat(answers.get("401").get("content").has("application/problem+json")).isTrue();
      if (path.contains("{")) {
        assertThat(answers.propertyNames()).as(path).contains("404");
      }
    }
  }

  @Test
  void sign_in_is_by_basic_and_fields_have_their_units() throws Exception {
    JsonNode components = description().get("components");
    assertThat(components.at("/securitySchemes/account/scheme").asString()).isEqualTo("basic");
    JsonNode schemas = components.get("schemas");
    assertThat(schemas.at("/FlangeRequest/properties/thicknessMm/description").asString())
        .contains("mm");
    assertThat(schemas.at("/StationForming/properties/setbackMm/description").asString())
        .isEqualTo("Millimetres.");
    assertThat(schemas.at("/FlangeRequest/required").valueStream().map(JsonNode::asString))
        .contains("kind", "thicknessMm")
        .doesNotContain("kFactor", "anisotropy");
    assertThat(schemas.get("Problem").get("properties").propertyNames())
        .contains("type", "title", "status", "detail", "field", "min", "max", "station");
  }

  private JsonNode description() throws Exception {
    return body(read("guest", "/openapi"));
  }

  private static boolean isOurs(Map.Entry<RequestMappingInfo, HandlerMethod> entry) {
    return entry.getValue().getBeanType().getName().startsWith("dev.flangewright.")
        && entry.getKey().getPatternValues().stream().anyMatch(p -> p.startsWith("/api/"));
  }
}
