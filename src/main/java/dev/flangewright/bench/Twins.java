package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/**
 * Finds the other hand of a part. Two parts are twins if they share frame and segment, one is left
 * and one is right, and no other part would do as well for either.
 */
interface Twins extends Repository<Part, Long> {

  @Query(
      """
      select t from Part t, Part p
      where p.id = :partId and t.frame = p.frame and t.segment = p.segment and p.segment <> ''
        and ((p.hand = dev.flangewright.parts.Hand.LEFT and t.hand = dev.flangewright.parts.Hand.RIGHT)
          or (p.hand = dev.flangewright.parts.Hand.RIGHT and t.hand = dev.flangewright.parts.Hand.LEFT))
      """)
  List<Part> candidates(long partId);

  default Optional<Part> of(long partId) {
    return onlyOne(candidates(partId)).filter(twin -> onlyOne(candidates(twin.id())).isPresent());
  }

  private static Optional<Part> onlyOne(List<Part> found) {
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }
}
