package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;

/** Finds what is photographed, whichever module has it. */
@Component
public class PhotoSubjects {

  private final List<Photographed> kinds;

  PhotoSubjects(List<Photographed> kinds) {
    this.kinds = kinds;
  }

  /**
   * @throws Refused if there is no such thing
   */
  public PhotoSubject of(SubjectKind kind, long subjectId) {
    return kinds.stream()
        .filter(one -> one.kind() == kind)
        .flatMap(one -> one.find(subjectId).stream())
        .findFirst()
        .orElseThrow(() -> Refused.unknown(kind.name().toLowerCase(Locale.ROOT), subjectId));
  }

  /**
   * @throws Refused if there is no such thing
   */
  public void refuseUnlessKnown(SubjectKind kind, long subjectId) {
    PhotoSubject unused = of(kind, subjectId);
  }
}
