package dev.flangewright.receipts;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All receipts. */
interface Receipts extends JpaRepository<Receipt, Long> {

  Optional<Receipt> findByAccountAndEntryKey(String account, String entryKey);
}
