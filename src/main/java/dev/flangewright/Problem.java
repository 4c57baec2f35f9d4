package dev.flangewright;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;

/**
 * What became of a request that could not be done, told alike to people (a page) and to programs
 * (RFC 9457, problem details).
 *
 * @param kind the last word of the problem's type
 * @param detail a sentence for the person who asked
 * @param facts further members of the answer, in order; a fact that is null is left out
 */
record Problem(
    HttpStatusCode status,
    String kind,
    String title,
    String detail,
    Map<String, Object> facts,
    HttpHeaders headers) {

  private static final String TYPES = "urn:flangewright:problem:";

  static Problem of(HttpStatus status, String kind, String title, String detail) {
    return new Problem(status, kind, title, detail, Map.of(), HttpHeaders.EMPTY);
  }

  /** Somebody else stored something in the meantime, and this request lost to it. */
  static Problem quicker() {
    return of(
        HttpStatus.CONFLICT,
        "quicker",
        "Somebody else was quicker",
        "Somebody else changed this at the same moment. Nothing of what you sent was stored; look at"
            + " what it says now and repeat your step if it is still needed.");
  }

  /** The database has no connection to spare, or cannot be reached. */
  static Problem busy() {
    HttpHeaders soon = new HttpHeaders();
    soon.set(HttpHeaders.RETRY_AFTER, "5");
    return of(
            HttpStatus.SERVICE_UNAVAILABLE,
            "busy",
            "Too much at once",
            "The installation does not get through to its records at the moment. Wait a little, and"
                + " look whether your last entry is there before you enter it again.")
        .with(soon);
  }

  static Problem tooLarge() {
    return of(
        HttpStatus.CONTENT_TOO_LARGE,
        "too-large",
        "The file is too large",
        "The request is larger than this installation takes. Nothing was stored; send fewer parts"
            + " at a time, or a photo of at most 15 MB.");
  }

  /**
   * @param seconds to wait before the next attempt
   */
  static Problem tooOften(long seconds) {
    HttpHeaders headers = new HttpHeaders();
    headers.set(HttpHeaders.RETRY_AFTER, String.valueOf(seconds));
    return of(
            HttpStatus.TOO_MANY_REQUESTS,
            "too-often",
            "Too many sign-ins have failed",
            "Too many sign-ins have failed. Try again in %d s.".formatted(seconds))
        .with(headers);
  }

  /** The answer for a status alone, where nothing more is known. */
  static Problem ofStatus(HttpStatusCode status) {
    HttpStatus known = HttpStatus.resolve(status.value());
    return switch (status.value()) {
      case 401 -> of(HttpStatus.UNAUTHORIZED, "sign-in", "Sign in first", "Sign in first.");
      case 403 ->
          of(
              HttpStatus.FORBIDDEN,
              "not-allowed",
              "Your account may not do this",
              "Your account may not do this. Nothing was changed.");
      case 404 ->
          of(
              HttpStatus.NOT_FOUND,
              "unknown",
              "There is nothing at this address",
              "There is nothing at this address.");
      case 413 -> tooLarge();
      default ->
          new Problem(
              status,
              status.is5xxServerError() ? "failed" : "unreadable",
              known == null ? "That did not work" : known.getReasonPhrase(),
              "The request could not be done. Nothing was changed.",
              Map.of(),
              HttpHeaders.EMPTY);
    };
  }

  /** The same problem with a fact more. */
  Problem with(String name, @Nullable Object fact) {
    if (fact == null) {
      return this;
    }
    Map<String, Object> more = new LinkedHashMap<>(facts);
    more.put(name, fact);
    return new Problem(status, kind, title, detail, more, headers);
  }

  Problem with(HttpHeaders more) {
    return new Problem(status, kind, title, detail, facts, more);
  }

  /** The members of the problem document. */
  Map<String, Object> document() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("type", TYPES + kind);
    members.put("title", title);
    members.put("status", status.value());
    members.put("detail", detail);
    members.putAll(facts);
    return members;
  }
}
