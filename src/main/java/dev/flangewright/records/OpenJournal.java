package dev.flangewright.records;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.MayManagePeople;
import dev.flangewright.people.MayReadJournal;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;

/** Opens a chain of the journal to those who may read it. */
@Service
public class OpenJournal {

  private final Builds builds;
  private final Checkpoints checkpoints;
  private final CheckJournal check;
  private final FindEntries find;
  private final ReadJournal read;

  OpenJournal(
      Builds builds,
      Checkpoints checkpoints,
      CheckJournal check,
      FindEntries find,
      ReadJournal read) {
    this.builds = builds;
    this.checkpoints = checkpoints;
    this.check = check;
    this.find = find;
    this.read = read;
  }

  /**
   * @throws Refused if there is no such build
   */
  @MayReadJournal
  public Journal ofBuild(long id) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    return open(Chains.ofBuild(id));
  }

  /** Of accounts and of the builds themselves. */
  @MayManagePeople
  public Journal ofInstallation() {
    return open(Chains.INSTALLATION);
  }

  private Journal open(String chain) {
    return new Journal(chain, checkpoints, check, find, read);
  }
}
