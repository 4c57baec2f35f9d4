package dev.flangewright.materials;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps the metals that a build enters from its own certificates; none is ever deleted. */
@Service
@Transactional
public class KeepOwnMetals {

  private final OwnMetals metals;
  private final ApplicationEventPublisher events;
  private final Clock clock;

  KeepOwnMetals(OwnMetals metals, ApplicationEventPublisher events, Clock clock) {
    this.metals = metals;
    this.events = events;
    this.clock = clock;
  }

  /** Those of a build, withdrawn ones too. */
  @Transactional(readOnly = true)
  public List<OwnMetal> of(long buildId) {
    return metals.ofBuild(buildId);
  }

  /**
   * @throws Refused if the build has no such metal
   */
  @Transactional(readOnly = true)
  public OwnMetal one(long buildId, long id) {
    return metals
        .findById(id)
        .filter(metal -> metal.buildId() == buildId)
        .orElseThrow(() -> Refused.unknown("metal", id));
  }

  /**
   * @throws Refused if other values in force would answer for the same sheet
   */
  @MayEditRegister
  public OwnMetal add(long buildId, OwnMetalEntry entry) {
    if (metals.inForce(buildId).stream().anyMatch(metal -> metal.overlaps(entry))) {
      throw Refused.conflict(
          "There are already values for "
              + entry.alloy()
              + " "
              + entry.temper()
              + " that reach this thickness. Change or withdraw them.");
    }
    OwnMetal metal =
        metals.saveAndFlush(new OwnMetal(buildId, entry, SignedIn.name(), clock.instant()));
    events.publishEvent(new OwnMetalsChanged(buildId, metal.alloy(), metal.temper()));
    return metal;
  }

  /**
   * Withdraws the values and enters others in their place.
   *
   * @throws Refused if somebody else changed them since {@code version} was read
   */
  @MayEditRegister
  public OwnMetal change(long buildId, long id, long version, OwnMetalEntry entry) {
    withdraw(buildId, id, version);
    return add(buildId, entry);
  }

  /**
   * The values stay in the record and answer no more.
   *
   * @throws Refused if somebody else changed them since {@code version} was read
   */
  @MayEditRegister
  public void withdraw(long buildId, long id, long version) {
    OwnMetal metal = one(buildId, id);
    if (metal.version() != version || metal.isWithdrawn()) {
      throw Refused.conflict(
          "Somebody changed these values in the meantime. Nothing was stored; look at them again.");
    }
    metal.isWithdrawn(SignedIn.name(), clock.instant());
    metals.flush();
    events.publishEvent(new OwnMetalsChanged(buildId, metal.alloy(), metal.temper()));
  }
}
