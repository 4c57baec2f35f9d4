package dev.flangewright.receipts;

import dev.flangewright.people.Refused;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** That what was sent with a key was stored, and what came of it. What is refused leaves none. */
@Entity
@SuppressWarnings("UnusedVariable") // account and key are what it is found by
class Receipt {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private String account;
  private String entryKey;
  private String subject;
  private String content;
  private long answer;
  private Instant receivedAt;

  protected Receipt() {}

  /**
   * Claims the key for something that is about to be stored.
   *
   * @param subject what it is for: {@code "piece 12"}
   */
  Receipt(String account, UUID key, String subject, String digest, Instant now) {
    this.account = account;
    this.entryKey = key.toString();
    this.subject = subject;
    this.content = digest;
    this.receivedAt = now;
  }

  /** Notes the number of what came of it. */
  void isAnsweredBy(long number) {
    this.answer = number;
  }

  /**
   * @throws Refused if the key came with something else than now
   */
  void refuseUnlessFor(String wanted, String digest) {
    if (!subject.equals(wanted) || !content.equals(digest)) {
      throw Refused.unacceptable(
          "This key was used for another entry already. Nothing was stored; give every entry a key"
              + " of its own.");
    }
  }

  long answer() {
    return answer;
  }
}
