package dev.flangewright.phones;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A phone with somebody's session, which sends forms as {@code js/send.js} does. */
final class Phone {

  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
  private static final Duration PATIENCE = Duration.ofMinutes(1);
  private static final JsonMapper JSON = JsonMapper.shared();

  private final HttpClient network;
  private final String server;
  private final String account;
  private String session = "";
  private String token = "";

  private Phone(HttpClient network, String server, String account) {
    this.network = network;
    this.server = server;
    this.account = account;
  }

  static Phone signedIn(HttpClient network, String server, String account, String password)
      throws IOException, InterruptedException {
    Phone phone = new Phone(network, server, account);
    Matcher form = TOKEN.matcher(phone.get("/sign-in"));
    if (!form.find()) {
      throw new IllegalStateException("The sign-in page has no token");
    }
    phone.token = form.group(1);
    HttpResponse<String> in =
        network.send(
            phone.form("/sign-in", Map.of("username", account, "password", password)),
            BodyHandlers.ofString());
    phone.keepSession(in);
    JsonNode fresh = JSON.readTree(phone.get("/bench/token"));
    phone.token = fresh.get("token").asString();
    return phone;
  }

  String account() {
    return account;
  }

  CompletableFuture<HttpResponse<String>> send(String address, Map<String, String> fields) {
    return network.sendAsync(form(address, fields), BodyHandlers.ofString());
  }

  private HttpRequest form(String address, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"))
            + "&_csrf="
            + encoded(token);
    return to(address)
        .header("Content-Type", "application/x-www-form-urlencoded")
        .header("Accept", "text/html, application/problem+json")
        .POST(BodyPublishers.ofString(body))
        .build();
  }

  private String get(String address) throws IOException, InterruptedException {
    HttpResponse<String> page = network.send(to(address).GET().build(), BodyHandlers.ofString());
    keepSession(page);
    return page.body();
  }

  private HttpRequest.Builder to(String address) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(server + address)).timeout(PATIENCE);
    return session.isEmpty() ? request : request.header("Cookie", session);
  }

  private void keepSession(HttpResponse<?> answer) {
    answer.headers().allValues("Set-Cookie").stream()
        .filter(cookie -> cookie.startsWith("flangewright="))
        .forEach(cookie -> session = cookie.substring(0, cookie.indexOf(';')));
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }
}
