package dev.flangewright.overview.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The form of the first run; {@code start} is {@code empty} or {@code demo}. */
record FirstRunForm(String token, String name, String password, String start, String buildName) {

  static final String DEMO = "demo";

  FirstRunForm(
      @Nullable String token,
      @Nullable String name,
      @Nullable String password,
      @Nullable String start,
      @Nullable String buildName) {
    this.token = Objects.requireNonNullElse(token, "");
    this.name = Objects.requireNonNullElse(name, "");
    this.password = Objects.requireNonNullElse(password, "");
    this.start = Objects.requireNonNullElse(start, "empty");
    this.buildName = Objects.requireNonNullElse(buildName, "");
  }
}
