package dev.flangewright.quality;

import dev.flangewright.bench.CodeOfName;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps the list of scrap causes. None is ever deleted, so that old records keep theirs. */
@Service
@Transactional
public class KeepScrapCauses {

  private final ScrapCauses causes;

  KeepScrapCauses(ScrapCauses causes) {
    this.causes = causes;
  }

  /** Those that are retired included. */
  @Transactional(readOnly = true)
  public List<ScrapCause> all() {
    return causes.findAllByOrderBySeq();
  }

  /** Those that are offered for a newly scrapped piece. */
  @Transactional(readOnly = true)
  public List<ScrapCause> offered() {
    return causes.findByRetiredFalseOrderBySeq();
  }

  @MayEditRegister
  public void add(String name, String usualReason, String prevention) {
    List<ScrapCause> all = causes.findAllByOrderBySeq();
    refuseTaken(name, null, all);
    String code =
        CodeOfName.of(name, "cause", wanted -> all.stream().anyMatch(c -> c.code().equals(wanted)));
    int seq = all.stream().mapToInt(ScrapCause::seq).max().orElse(0) + 1;
    causes.save(new ScrapCause(seq, code, name, usualReason, prevention));
  }

  /**
   * @throws Refused if somebody else changed the cause since {@code version} was read
   */
  @MayEditRegister
  public void reword(long id, long version, String name, String usualReason, String prevention) {
    ScrapCause cause = asSeen(id, version);
    refuseTaken(name, cause, causes.findAllByOrderBySeq());
    cause.reads(name, usualReason, prevention);
  }

  @MayEditRegister
  public void retire(long id, long version, boolean retired) {
    asSeen(id, version).isRetired(retired);
  }

  private ScrapCause asSeen(long id, long version) {
    ScrapCause cause = causes.findById(id).orElseThrow(() -> Refused.unknown("cause", id));
    if (cause.version() != version) {
      throw Refused.conflict(
          "Somebody changed this cause in the meantime. Nothing was stored; look at it again.");
    }
    return cause;
  }

  private static void refuseTaken(String name, @Nullable ScrapCause self, List<ScrapCause> all) {
    boolean taken =
        all.stream().anyMatch(c -> c != self && c.name().equalsIgnoreCase(name.strip()));
    if (taken) {
      throw Refused.conflict("There is already a cause named \"" + name.strip() + "\".");
    }
  }
}
