package dev.flangewright.parts.exchange;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.stereotype.Service;

/** Runs imports in the background, one at a time for each build. */
@Service
public class ImportJobs {

  private static final Logger log = LoggerFactory.getLogger(ImportJobs.class);
  private static final int AT_ONCE = 2;
  private static final int SECONDS_TO_FINISH = 20;

  private final ImportRegister imports;
  private final Builds builds;
  private final ImportFolder folder;
  private final Map<Long, ImportJob> latest = new ConcurrentHashMap<>();
  private final ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);

  ImportJobs(ImportRegister imports, Builds builds, ImportFolder folder) {
    this.imports = imports;
    this.builds = builds;
    this.folder = folder;
  }

  /**
   * Keeps the uploaded files and begins to check them. Files of the same build that were checked
   * but not accepted are given up.
   *
   * @throws Refused if there is no file or no such build, or one is being imported just now
   */
  @MayEditRegister
  public ImportJob start(long buildId, RegisterFiles uploads) {
    if (uploads.areMissing()) {
      throw Refused.unacceptable("Choose register.csv, contours.csv or both.");
    }
    if (!builds.existsById(buildId)) {
      throw Refused.unknown("build", buildId);
    }
    ImportJob job = latest.compute(buildId, (id, before) -> replaced(id, before, uploads));
    run(job, () -> check(job));
    return job;
  }

  private ImportJob replaced(long buildId, @Nullable ImportJob before, RegisterFiles uploads) {
    if (before != null && before.isRunning()) {
      throw Refused.conflict(
          "Another import into this build is under way. Wait until it is done and try again.");
    }
    if (before != null) {
      ImportFolder.delete(before.folder());
    }
    return stored(buildId, uploads);
  }

  private ImportJob stored(long buildId, RegisterFiles uploads) {
    String id = UUID.randomUUID().toString();
    try {
      Path own = folder.newFolder(id);
      RegisterFiles files =
          RegisterFiles.of(
              ImportFolder.store(uploads.register(), own, CsvFile.REGISTER),
              ImportFolder.store(uploads.contours(), own, CsvFile.CONTOURS));
      return new ImportJob(id, buildId, own, files);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Empty after a restart, and once other files of the build were uploaded. */
  public Optional<ImportJob> find(long buildId, String id) {
    return latest(buildId).filter(job -> job.id().equals(id));
  }

  /** The job of a build that is under way or was the last. */
  public Optional<ImportJob> latest(long buildId) {
    return Optional.ofNullable(latest.get(buildId));
  }

  /** Begins to store what was shown; does nothing if that has begun already. */
  @MayEditRegister
  public void accept(ImportJob job) {
    ImportPlan shown = job.plan();
    if (shown != null && job.isAccepted()) {
      run(job, () -> store(job, shown.fingerprint()));
    }
  }

  /**
   * Deletes the files.
   *
   * @throws Refused if they are being worked on
   */
  @MayEditRegister
  public void discard(ImportJob job) {
    if (job.isRunning()) {
      throw Refused.conflict("The files are being worked on; they can be discarded after that.");
    }
    latest.remove(job.buildId(), job);
    ImportFolder.delete(job.folder());
  }

  private void run(ImportJob job, Runnable work) {
    threads.execute(new DelegatingSecurityContextRunnable(() -> unlessRefused(job, work)));
  }

  private void check(ImportJob job) {
    ImportPlan plan = imports.preview(job.buildId(), job.files(), job::reports);
    if (plan.isRefused() || plan.changesNothing()) {
      ImportFolder.delete(job.folder());
    }
    job.isChecked(plan);
  }

  private void store(ImportJob job, String fingerprint) {
    ImportResult result =
        imports.applyAsShown(job.buildId(), job.files(), fingerprint, job::reports);
    ImportFolder.delete(job.folder());
    job.isStored(result.stored());
  }

  private static void unlessRefused(ImportJob job, Runnable work) {
    try {
      work.run();
    } catch (Refused refused) {
      ImportFolder.delete(job.folder());
      job.isRefused(String.valueOf(refused.getMessage()));
    } catch (RuntimeException e) {
      log.error("Import {} into build {} failed", job.id(), job.buildId(), e);
      ImportFolder.delete(job.folder());
      job.isRefused("The import failed and nothing was stored. The program's log says why.");
    }
  }

  @PreDestroy
  void stop() throws InterruptedException {
    threads.shutdown();
    threads.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS);
  }
}
