package dev.flangewright.records.backup;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.scheduling.concurrent.SimpleAsyncTaskScheduler;
import org.springframework.stereotype.Component;

/**
 * Makes the nightly backup. Each minute it asks whether the newest one is from before the last time
 * one was due: so a night in which the machine was off is made up for at the next start.
 */
@Component
class NightlyBackup implements AutoCloseable {

  private static final Logger log = LoggerFactory.getLogger(NightlyBackup.class);
  private static final Duration LOOK = Duration.ofMinutes(1);
  private static final Duration AFTER_A_FAILURE = Duration.ofHours(1);

  private final BackUp backUp;
  private final BackupFolder folder;
  private final BackupSettings settings;
  private final DataSource database;
  private final Clock clock;
  private final SimpleAsyncTaskScheduler scheduler = new SimpleAsyncTaskScheduler();
  private Instant notBefore = Instant.MIN;

  NightlyBackup(
      BackUp backUp,
      BackupFolder folder,
      BackupSettings settings,
      DataSource database,
      Clock clock) {
    this.backUp = backUp;
    this.folder = folder;
    this.settings = settings;
    this.database = database;
    this.clock = clock;
  }

  @EventListener(ApplicationReadyEvent.class)
  void begin() {
    if (settings.at().isPresent()) {
      scheduler.setThreadNamePrefix("backup-");
      var unused = scheduler.scheduleWithFixedDelay(this::look, clock.instant().plus(LOOK), LOOK);
    }
  }

  private void look() {
    Instant now = clock.instant();
    try {
      if (now.isAfter(notBefore) && isDue(now)) {
        backUp.of(database, Occasion.NIGHTLY, now);
      }
    } catch (RuntimeException failed) {
      notBefore = now.plus(AFTER_A_FAILURE);
      log.error("BACKUP FAILED; tried again in an hour", failed);
    }
  }

  private boolean isDue(Instant now) {
    Optional<Instant> newest =
        folder.all().stream()
            .filter(one -> one.verified() && one.occasion() == Occasion.NIGHTLY)
            .map(Backup::made)
            .findFirst();
    return settings.at().filter(at -> isDue(at, now, newest, ZoneId.systemDefault())).isPresent();
  }

  /** Whether none has been made since the last time that one should have been. */
  static boolean isDue(LocalTime at, Instant now, Optional<Instant> newest, ZoneId zone) {
    ZonedDateTime here = now.atZone(zone);
    ZonedDateTime today = here.with(at);
    ZonedDateTime last = today.isAfter(here) ? today.minusDays(1) : today;
    return newest.filter(made -> !made.isBefore(last.toInstant())).isEmpty();
  }

  @Override
  public void close() {
    scheduler.close();
  }
}
