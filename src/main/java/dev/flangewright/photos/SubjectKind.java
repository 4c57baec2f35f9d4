package dev.flangewright.photos;

import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.util.Arrays;
import java.util.Set;
import org.springframework.security.access.AccessDeniedException;

/** What can be photographed, and who may add photos of it and take them off. */
public enum SubjectKind {
  PIECE("pieces", Permission.LOG_WORK, Permission.RELEASE_HOLD),
  INSPECTION("inspections", Permission.INSPECT, Permission.SCRAP),
  BLOCK("blocks", Permission.KEEP_BLOCKS, Permission.LOG_WORK);

  private final String pathWord;
  private final Set<Permission> anyOf;

  SubjectKind(String pathWord, Permission one, Permission other) {
    this.pathWord = pathWord;
    this.anyOf = Set.of(one, other);
  }

  /**
   * @param pathWord as it stands in addresses: {@code "pieces"}
   * @throws Refused if nothing of that name is photographed
   */
  public static SubjectKind at(String pathWord) {
    return Arrays.stream(values())
        .filter(kind -> kind.pathWord.equals(pathWord))
        .findFirst()
        .orElseThrow(() -> Refused.unknown("photo of", pathWord));
  }

  /** Where the photos of one of them stand. */
  String address(long subjectId) {
    return "/%s/%d/photos".formatted(pathWord, subjectId);
  }

  /** Whether the signed-in account may add photos and take them off. */
  boolean isOpen() {
    return anyOf.stream().anyMatch(SignedIn::may);
  }

  /**
   * @throws AccessDeniedException unless {@link #isOpen}
   */
  public void refuseUnlessOpen() {
    if (!isOpen()) {
      throw new AccessDeniedException("Photos of " + pathWord + " need one of " + anyOf);
    }
  }
}
