package dev.flangewright.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Makes whoever guesses passwords wait: for one name from everywhere, and from one address for all
 * names. Where a name has signed in from an address before, only its own failures there slow it
 * down, so that nobody is locked out by others. Kept in memory: a restart begins anew.
 */
@Component
class SignInAttempts {

  private static final Logger LOG = LoggerFactory.getLogger(SignInAttempts.class);
  private static final int MOST_KNOWN = 10_000;

  private final Pauses ofNames = new Pauses(5, Duration.ofMinutes(1));
  private final Pauses ofAddresses = new Pauses(20, Duration.ofMinutes(5));
  private final Set<String> known = Collections.synchronizedSet(new LinkedHashSet<>());
  private final Clock clock;

  SignInAttempts(Clock clock) {
    this.clock = clock;
  }

  /**
   * @throws TooManyAttempts with the seconds to wait, before any password is looked at; the same
   *     for a name that nobody has
   */
  void begin(String name, String address) {
    Instant now = clock.instant();
    String who = who(name, address);
    Duration ofName = ofNames.left(who, now);
    Duration ofAddress = isKnown(name, address) ? Duration.ZERO : ofAddresses.left(address, now);
    Duration longer = ofName.compareTo(ofAddress) > 0 ? ofName : ofAddress;
    if (longer.compareTo(Duration.ZERO) > 0) {
      throw new TooManyAttempts(longer.plusMillis(999).toSeconds());
    }
    ofNames.begins(who, now);
    ofAddresses.begins(address, now);
  }

  void failed(String name, String address) {
    Instant now = clock.instant();
    ofNames.failed(who(name, address), now);
    ofAddresses.failed(address, now);
    LOG.warn("Sign-in failed for \"{}\" from {}", inOneLine(name), address);
  }

  /** Failures from the address for other names go on counting. */
  void succeeded(String name, String address) {
    ofNames.forget(who(name, address));
    remember(pair(name, address));
    LOG.debug("\"{}\" signed in from {}", inOneLine(name), address);
  }

  private String who(String name, String address) {
    return isKnown(name, address) ? pair(name, address) : name.toLowerCase(Locale.ROOT);
  }

  private boolean isKnown(String name, String address) {
    return known.contains(pair(name, address));
  }

  private void remember(String pair) {
    synchronized (known) {
      known.add(pair);
      if (known.size() > MOST_KNOWN) {
        known.remove(known.iterator().next());
      }
    }
  }

  private static String pair(String name, String address) {
    return name.toLowerCase(Locale.ROOT) + "\n" + address;
  }

  /** Nobody writes a second line into the log by way of a name. */
  private static String inOneLine(String name) {
    String shown = name.length() > 60 ? name.substring(0, 60) : name;
    return shown.replaceAll("[^\\p{L}\\p{N} ._-]", "?");
  }
}
