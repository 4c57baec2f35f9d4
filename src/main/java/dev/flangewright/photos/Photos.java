package dev.flangewright.photos;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All photos, without their pictures. */
interface Photos extends JpaRepository<Photo, Long> {

  List<Photo> findBySubjectKindAndSubjectIdInOrderById(
      SubjectKind kind, Collection<Long> subjectIds);

  Optional<Photo> findBySubjectKindAndSubjectIdAndSha256(
      SubjectKind kind, long subjectId, String sha256);
}
