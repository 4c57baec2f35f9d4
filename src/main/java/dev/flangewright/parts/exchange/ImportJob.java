package dev.flangewright.parts.exchange;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Uploaded files on their way into a build: checked, then accepted and stored, or discarded. Read
 * by pages while another thread works on it.
 */
public final class ImportJob {

  /** How far it has come. */
  public enum State {
    CHECKING,
    CHECKED,
    STORING,
    STORED,
    REFUSED
  }

  private final String id;
  private final long buildId;
  private final Path folder;
  private final RegisterFiles files;
  private State state = State.CHECKING;
  private String doing = "Waiting for its turn";
  private long done;
  private long of = 1;
  private @Nullable ImportPlan plan;
  private @Nullable String refusal;

  ImportJob(String id, long buildId, Path folder, RegisterFiles files) {
    this.id = id;
    this.buildId = buildId;
    this.folder = folder;
    this.files = files;
  }

  synchronized void reports(String step, long soFar, long whole) {
    doing = step;
    done = soFar;
    of = Math.max(1, whole);
  }

  synchronized void isChecked(ImportPlan found) {
    plan = found;
    state = State.CHECKED;
  }

  /** False if it is not waiting to be accepted, so that a second click does nothing. */
  synchronized boolean isAccepted() {
    if (state != State.CHECKED || plan == null || plan.isRefused() || plan.changesNothing()) {
      return false;
    }
    state = State.STORING;
    reports("Waiting for its turn", 0, 1);
    return true;
  }

  synchronized void isStored(ImportPlan stored) {
    plan = stored;
    state = State.STORED;
  }

  synchronized void isRefused(String sentence) {
    refusal = sentence;
    state = State.REFUSED;
  }

  public String id() {
    return id;
  }

  public long buildId() {
    return buildId;
  }

  Path folder() {
    return folder;
  }

  RegisterFiles files() {
    return files;
  }

  /** How it stands at this instant. */
  public synchronized ImportNow now() {
    return new ImportNow(id, state, doing, (int) (100 * done / of), plan, refusal);
  }

  /** True while a thread works on it. */
  synchronized boolean isRunning() {
    return now().isRunning();
  }

  /** What it would do, or has done; null until it is checked. */
  synchronized @Nullable ImportPlan plan() {
    return plan;
  }
}
