package dev.flangewright.records.capture;

import java.util.Map;
import java.util.Set;

/**
 * What the journal does not take down, with the reason. Everything else that is stored through
 * Hibernate is taken down without being named anywhere. Sessions are no entities and are not the
 * workshop's records.
 */
final class LeftOut {

  /** Entities, by name. */
  static final Map<String, String> ENTITIES =
      Map.of(
          "Receipt", "says only that an entry came with a key; the entry itself is taken down",
          "PhotoImage",
              "the bytes of a picture; its photo, with the digest of the file sent, is taken down");

  /** Fields, as entity and field; a group of fields by the name of the group. */
  static final Map<String, String> FIELDS =
      Map.of(
          "Part.summary", "worked out from the drawing, again at any time",
          "Flange.summary", "worked out from the contour, again at any time",
          "Piece.standing", "worked out from the stages and the log",
          "AccessToken.lastUsedAt", "noted while somebody reads, and no record of the work");

  /** Fields of which only that they changed is taken down. */
  static final Set<String> SECRETS =
      Set.of("Account.passwordHash", "AccessToken.digest", "Invitation.digest");

  /** Stands for the value of a secret. */
  static final String SECRET = "(secret)";

  private LeftOut() {}

  static boolean entity(String entity) {
    return ENTITIES.containsKey(entity);
  }

  static boolean field(String entity, String field) {
    return FIELDS.containsKey(entity + "." + field);
  }

  static boolean isSecret(String entity, String field) {
    return SECRETS.contains(entity + "." + field);
  }
}
