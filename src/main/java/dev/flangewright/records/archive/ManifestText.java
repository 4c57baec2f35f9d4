package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The manifest as JSON. A later program may add to it without a new format. */
final class ManifestText {

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private ManifestText() {}

  static byte[] of(Manifest manifest) {
    return JSON.writeValueAsBytes(manifest);
  }

  /**
   * @throws Refused if it is not the manifest of an archive that this program can read
   */
  static Manifest read(byte[] written) {
    try {
      Manifest manifest = JSON.readValue(written, Manifest.class);
      refuseOtherFormats(manifest);
      return manifest;
    } catch (JacksonException unreadable) {
      throw Refused.unacceptable("The manifest of this archive cannot be read.");
    }
  }

  private static void refuseOtherFormats(Manifest manifest) {
    if (!manifest.format().equals(Manifest.FORMAT)) {
      throw Refused.unacceptable("This is not an archive of Flangewright.");
    }
    if (manifest.formatVersion() > Manifest.FORMAT_VERSION) {
      throw Refused.unacceptable(
          "This archive was written by a newer version of Flangewright (%s)."
              .formatted(manifest.program()));
    }
  }
}
