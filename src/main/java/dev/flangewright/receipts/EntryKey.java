package dev.flangewright.receipts;

/** How an entry carries the key that makes it safe to send again. */
public final class EntryKey {

  /** The header, as draft-ietf-httpapi-idempotency-key-header names it. */
  public static final String HEADER = "Idempotency-Key";

  public static final String FIELD = "entryKey";

  public static final String MEANING =
      "A UUID of the entry's own. An entry sent again with its key is answered as the first time and"
          + " logged once; the key with another entry is refused (422). A refused entry may be sent"
          + " again.";

  private EntryKey() {}
}
