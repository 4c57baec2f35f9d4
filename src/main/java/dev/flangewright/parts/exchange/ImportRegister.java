package dev.flangewright.parts.exchange;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;

/** Imports register.csv and contours.csv, both or one of them, into a build. */
@Service
public class ImportRegister {

  private static final String ANOTHER =
      "Another import into this build is being stored. Nothing of this one was; wait until it is"
          + " done and try again.";
  private static final String IN_THE_MEANTIME =
      "Somebody changed the register while the rows were being stored. Nothing of this import was;"
          + " check the files again and look at what would change now.";

  private final PlanImport planner;
  private final StoreImport store;
  private final Set<Long> storing = ConcurrentHashMap.newKeySet();

  ImportRegister(PlanImport planner, StoreImport store) {
    this.planner = planner;
    this.store = store;
  }

  /**
   * What an import would do; changes nothing.
   *
   * @throws Refused if there is no such build, or no file
   */
  @MayEditRegister
  public ImportPlan preview(long buildId, RegisterFiles files, Progress progress) {
    return planner.plan(buildId, files, progress);
  }

  /**
   * Stores everything in one transaction, or nothing. Joins a transaction that is open, and clears
   * its persistence context.
   *
   * @throws ImportRefused if the files have problems
   * @throws Refused if there is no such build, or somebody else changes the register just now
   */
  @MayEditRegister
  public ImportResult apply(long buildId, RegisterFiles files, Progress progress) {
    return store(buildId, files, null, progress);
  }

  /**
   * As {@link #apply}, but only what was shown.
   *
   * @throws Refused also if the effect is no longer that of the plan with this fingerprint
   */
  @MayEditRegister
  public ImportResult applyAsShown(
      long buildId, RegisterFiles files, String fingerprint, Progress progress) {
    return store(buildId, files, fingerprint, progress);
  }

  private ImportResult store(
      long buildId, RegisterFiles files, @Nullable String shown, Progress progress) {
    if (!storing.add(buildId)) {
      throw Refused.conflict(ANOTHER);
    }
    try {
      return store.store(buildId, files, shown, progress);
    } catch (ConcurrencyFailureException | DataIntegrityViolationException e) {
      throw Refused.conflict(IN_THE_MEANTIME);
    } finally {
      storing.remove(buildId);
    }
  }
}
