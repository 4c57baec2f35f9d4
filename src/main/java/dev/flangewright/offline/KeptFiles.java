package dev.flangewright.offline;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/** The files that every page needs, and a version that changes when one of them does. */
@Component
class KeptFiles {

  private static final String FOLDER = "classpath:static/";
  private static final List<String> PATTERNS =
      List.of("css/*.css", "js/*.js", "icons/*", "icon.svg", "manifest.webmanifest");

  private static final List<String> BEHIND_THEM =
      List.of("classpath:templates/**/*.html", "classpath:offline/*.js");

  private final List<String> addresses;
  private final String version;

  KeptFiles() throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    for (String pattern : BEHIND_THEM) {
      for (Resource file : find(pattern)) {
        digest.update(file.getContentAsByteArray());
      }
    }
    Stream.Builder<String> found = Stream.builder();
    for (String pattern : PATTERNS) {
      for (Resource file : find(FOLDER + pattern)) {
        digest.update(file.getContentAsByteArray());
        found.add(pattern.replaceFirst("[^/]+$", "") + file.getFilename());
      }
    }
    this.addresses = found.build().sorted().toList();
    this.version = HexFormat.of().formatHex(digest.digest(), 0, 6);
  }

  private static List<Resource> find(String pattern) throws IOException {
    Resource[] files = new PathMatchingResourcePatternResolver().getResources(pattern);
    return Arrays.stream(files).sorted((one, other) -> name(one).compareTo(name(other))).toList();
  }

  private static String name(Resource file) {
    return String.valueOf(file.getFilename());
  }

  /** Their addresses, below the root of the installation. */
  List<String> addresses() {
    return addresses;
  }

  /** Twelve hexadecimal digits. */
  String version() {
    return version;
  }
}
