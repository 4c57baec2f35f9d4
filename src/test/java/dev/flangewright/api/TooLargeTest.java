package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.people.KeepAccounts;
import dev.flangewright.testing.DatabaseTest;
import java.io.ByteArrayInputStream;
import java.io.SequenceInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Real bodies of 50 MB against a real server. */
@DatabaseTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class TooLargeTest {

  private static final byte[] FIFTY_MEGABYTES = new byte[50 * 1024 * 1024];
  private static final String ACCOUNT = "lead:bench-password-lead";

  @Autowired KeepAccounts accounts;
  @LocalServerPort int port;

  private final HttpClient client = HttpClient.newHttpClient();

  @BeforeEach
  void somebody() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "bench-password-lead");
    }
  }

  @Test
  void fifty_megabytes_for_the_api_are_too_large_not_forbidden() throws Exception {
    HttpResponse<String> answer = send("/api/v1/builds", "application/json");
    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    assertThat(answer.body()).contains("\"status\":413", "Nothing was stored");
  }

  @Test
  void a_file_of_fifty_megabytes_for_the_api_is_answered_as_a_document_too() throws Exception {
    HttpResponse<String> answer =
        send("/api/v1/builds/1/import", "multipart/form-data; boundary=" + "x".repeat(20));
    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  @Test
  void fifty_megabytes_from_a_form_are_too_large_not_forbidden() throws Exception {
    HttpResponse<String> answer =
        send("/builds/1/import", "multipart/form-data; boundary=" + "x".repeat(20));
    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/html");
    assertThat(answer.body()).contains("The file is too large");
  }

  @Test
  void a_photo_of_fifty_megabytes_is_told_how_large_it_may_be() throws Exception {
    for (String address : List.of("/pieces/1/photos", "/api/v1/pieces/1/photos")) {
      HttpResponse<String> answer =
          send(address, "multipart/form-data; boundary=" + "x".repeat(20));
      assertThat(answer.statusCode()).isEqualTo(413);
      assertThat(answer.body()).contains("a photo of at most 15 MB");
    }
  }

  @Test
  void a_large_file_that_does_not_announce_its_size_is_too_large_as_well() throws Exception {
    String head =
        "--edge\r\nContent-Disposition: form-data; name=\"register\"; filename=\"r.csv\"\r\n\r\n";
    HttpRequest request =
        request("/api/v1/builds/1/import", "multipart/form-data; boundary=edge")
            .POST(
                BodyPublishers.ofInputStream(
                    () ->
                        new SequenceInputStream(
                            new ByteArrayInputStream(head.getBytes(StandardCharsets.UTF_8)),
                            new ByteArrayInputStream(FIFTY_MEGABYTES))))
            .build();
    assertThat(client.send(request, BodyHandlers.ofString()).statusCode()).isEqualTo(413);
  }

  @Test
  void an_address_of_the_api_that_is_not_there_says_so() throws Exception {
    HttpRequest request = request("/api/v2/nothing", "application/json").GET().build();
    HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  private HttpResponse<String> send(String address, String type) throws Exception {
    HttpRequest request =
        request(address, type).POST(BodyPublishers.ofByteArray(FIFTY_MEGABYTES)).build();
    return client.send(request, BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String address, String type) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + port + address))
        .header("Content-Type", type)
        .header("Authorization", basic());
  }

  private static String basic() {
    byte[] account = ACCOUNT.getBytes(StandardCharsets.UTF_8);
    return "Basic " + Base64.getEncoder().encodeToString(account);
  }
}
