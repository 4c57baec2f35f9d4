package dev.flangewright.photos;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** The pictures, one at a time. */
interface PhotoImages extends JpaRepository<PhotoImage, Long> {

  @Query("select i.jpeg from PhotoImage i where i.photoId = :photoId and i.photoSize = :size")
  Optional<byte[]> jpeg(long photoId, PhotoSize size);
}
