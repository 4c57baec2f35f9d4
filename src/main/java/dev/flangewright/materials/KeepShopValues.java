package dev.flangewright.materials;

import dev.flangewright.forming.ShopValue;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.List;
import java.util.function.IntFunction;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what a build uses in place of the shop defaults, with every entry ever made. */
@Service
@Transactional
public class KeepShopValues {

  private final ShopValueEntries entries;
  private final ApplicationEventPublisher events;
  private final Clock clock;

  KeepShopValues(ShopValueEntries entries, ApplicationEventPublisher events, Clock clock) {
    this.entries = entries;
    this.events = events;
    this.clock = clock;
  }

  /** The values in force. */
  @Transactional(readOnly = true)
  public ShopValues of(long buildId) {
    return ShopValues.of(entries.inForce(buildId));
  }

  /** Every entry of a build, the newest first. */
  @Transactional(readOnly = true)
  public List<ShopValueEntry> entries(long buildId) {
    return entries.ofBuild(buildId);
  }

  /**
   * Uses a value of the build's own.
   *
   * @param seen the ordinal of the entry that was read; 0 if there was none
   * @throws dev.flangewright.forming.FormingException if the amount is out of its range
   * @throws Refused if the source is missing, or somebody else made an entry in the meantime
   */
  @MayEditRegister
  public void use(long buildId, ShopValue which, OwnShopValue own, int seen) {
    enter(
        buildId,
        which,
        seen,
        ordinal ->
            ShopValueEntry.own(buildId, which, ordinal, own, SignedIn.name(), clock.instant()));
  }

  /**
   * Goes back to the default.
   *
   * @throws Refused if the reason is missing, the default is in force already, or somebody else
   *     made an entry in the meantime
   */
  @MayEditRegister
  public void goBack(long buildId, ShopValue which, String reason, int seen) {
    if (!of(buildId).isOwn(which)) {
      throw Refused.conflict("The default of this value is in force already.");
    }
    enter(
        buildId,
        which,
        seen,
        ordinal ->
            ShopValueEntry.backToDefault(
                buildId, which, ordinal, reason, SignedIn.name(), clock.instant()));
  }

  private void enter(long buildId, ShopValue which, int seen, IntFunction<ShopValueEntry> entryOf) {
    int latest =
        entries.inForce(buildId).stream()
            .filter(entry -> entry.name() == which)
            .mapToInt(ShopValueEntry::ordinal)
            .findFirst()
            .orElse(0);
    if (latest != seen) {
      throw Refused.conflict(
          "Somebody changed this value in the meantime. Nothing was stored; look at it again.");
    }
    entries.saveAndFlush(entryOf.apply(latest + 1));
    events.publishEvent(new ShopValuesChanged(buildId));
  }
}
