package dev.flangewright;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.NumberSchema;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import java.util.Map;
import java.util.TreeMap;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.method.HandlerMethod;

/** What the description of the HTTP API says once for all addresses. */
@Configuration
class ApiDescription {

  private static final String SIGN_IN = "account";
  private static final String PROBLEM = "Problem";

  /** Fields carry their unit at the end of their name. */
  private static final Map<String, String> UNITS =
      Map.of(
          "MmPerMetre", "Millimetres per metre.",
          "Mm2", "Square millimetres.",
          "Mm", "Millimetres.",
          "Deg", "Degrees.",
          "Kg", "Kilograms.",
          "Strain", "Natural (logarithmic) strain, positive where the edge gets longer.",
          "At", "Date and time, UTC, ISO 8601.");

  @Bean
  OpenAPI describedApi() {
    return new OpenAPI()
        .info(
            new Info()
                .title("Flangewright")
                .version("1")
                .license(new License().name("Apache-2.0"))
                .description(
                    "Lengths in mm, angles in degrees, strains natural (logarithmic). Figures are"
                        + " shop estimates: the approved drawing, local rules and licensed people"
                        + " decide."))
        .components(
            new Components()
                .addSecuritySchemes(
                    SIGN_IN, new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme("basic"))
                .addSchemas(PROBLEM, problem()))
        .addSecurityItem(new SecurityRequirement().addList(SIGN_IN));
  }

  @Bean
  OperationCustomizer problemAnswers() {
    return (operation, handler) -> {
      answers(handler).forEach((status, words) -> add(operation, status, words));
      return operation;
    };
  }

  @Bean
  OpenApiCustomizer unitsFromNames() {
    return api -> api.getComponents().getSchemas().values().forEach(ApiDescription::nameUnits);
  }

  private static Map<String, String> answers(HandlerMethod handler) {
    Map<String, String> answers = new TreeMap<>();
    answers.put("401", "Sign in first.");
    if (handler.getMethodParameters().length > 0) {
      answers.put("400", "Not understood; names the field where one is to blame.");
      answers.put("404", "There is no such thing.");
    }
    if (handler.hasMethodAnnotation(PostMapping.class)) {
      answers.put("403", "The account may not do this.");
      answers.put("409", "Clashes with what is there, or somebody else was quicker.");
      answers.put("413", "The request is too large.");
    }
    answers.put("422", "These values cannot be taken; names the field and its range where known.");
    return answers;
  }

  private static void add(Operation operation, String status, String words) {
    Schema<?> schema = new Schema<>().$ref("#/components/schemas/" + PROBLEM);
    Content content =
        new Content().addMediaType("application/problem+json", new MediaType().schema(schema));
    operation.getResponses().put(status, new ApiResponse().description(words).content(content));
  }

  private static Schema<?> problem() {
    return new ObjectSchema()
        .description("Problem details, RFC 9457. Members that do not apply are left out.")
        .addProperty("type", text("What sort of problem this is, as a URN."))
        .addProperty("title", text("The sort in a few words."))
        .addProperty("status", new IntegerSchema().description("The HTTP status."))
        .addProperty("detail", text("A sentence for the person who asked."))
        .addProperty("field", text("The field that is to blame."))
        .addProperty("value", new Schema<>().description("What was given."))
        .addProperty("min", new NumberSchema().description("Lower end of the range."))
        .addProperty("max", new NumberSchema().description("Upper end of the range."))
        .addProperty("station", new IntegerSchema().description("The station, as in the file."))
        .addProperty("reference", text("Where a failure stands in the log."));
  }

  private static Schema<?> text(String description) {
    return new StringSchema().description(description);
  }

  private static void nameUnits(Schema<?> schema) {
    if (schema.getProperties() == null) {
      return;
    }
    schema
        .getProperties()
        .forEach(
            (name, property) -> {
              if (property.getDescription() == null && property.get$ref() == null) {
                UNITS.keySet().stream()
                    .filter(name::endsWith)
                    .findFirst()
                    .ifPresent(unit -> property.setDescription(UNITS.get(unit)));
              }
            });
  }
}
