package dev.flangewright.quality;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** The editable list of scrap causes. */
public interface ScrapCauses extends JpaRepository<ScrapCause, Long> {

  List<ScrapCause> findAllByOrderBySeq();

  List<ScrapCause> findByRetiredFalseOrderBySeq();

  Optional<ScrapCause> findByCode(String code);
}
