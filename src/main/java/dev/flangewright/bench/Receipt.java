package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** That an entry sent with a key was logged, and as which line. A refused entry leaves none. */
@Entity
@SuppressWarnings("UnusedVariable") // account and key are what it is found by
class Receipt {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private String account;
  private String entryKey;
  private long pieceId;
  private String content;
  private int entryOrdinal;
  private Instant receivedAt;

  protected Receipt() {}

  /** Claims the key for an entry that is about to be logged. */
  Receipt(String account, UUID key, long pieceId, String digest, Instant now) {
    this.account = account;
    this.entryKey = key.toString();
    this.pieceId = pieceId;
    this.content = digest;
    this.receivedAt = now;
  }

  /** Notes the line of the piece's log that came of it. */
  void isAnsweredBy(int ordinal) {
    this.entryOrdinal = ordinal;
  }

  /**
   * @throws Refused if the key came with another entry than now
   */
  void refuseUnlessFor(long piece, String digest) {
    if (pieceId != piece || !content.equals(digest)) {
      throw Refused.unacceptable(
          "This key was used for another entry already. Nothing was logged; give every entry a key"
              + " of its own.");
    }
  }

  int entryOrdinal() {
    return entryOrdinal;
  }
}
