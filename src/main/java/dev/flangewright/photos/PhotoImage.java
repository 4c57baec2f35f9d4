package dev.flangewright.photos;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** The picture of a photo in one size, as a JPEG without metadata. */
@Entity
@SuppressWarnings("UnusedVariable") // written here, read by query
class PhotoImage {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long photoId;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private PhotoSize photoSize;

  private byte[] jpeg;

  protected PhotoImage() {}

  PhotoImage(long photoId, PhotoSize size, byte[] jpeg) {
    this.photoId = photoId;
    this.photoSize = size;
    this.jpeg = jpeg;
  }
}
