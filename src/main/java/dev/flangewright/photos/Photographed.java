package dev.flangewright.photos;

import java.util.Optional;

/** A module's answer to what is photographed; one bean for each kind. */
public interface Photographed {

  SubjectKind kind();

  /** The one with that identity; empty if there is none. */
  Optional<PhotoSubject> find(long subjectId);
}
