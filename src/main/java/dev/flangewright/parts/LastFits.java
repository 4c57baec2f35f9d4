package dev.flangewright.parts;

import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Station;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fair fits made last: one takes up to some tenths of a second, and a flange that is checked,
 * stored and then looked at asks for the same one again. A fit depends on nothing but its stations
 * and tolerance, so a kept one never grows stale.
 */
final class LastFits {

  private static final int KEPT = 24;

  private record Key(List<Station> stations, double toleranceMm) {}

  private static final Map<Key, FairFit> FITS =
      Collections.synchronizedMap(
          new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Key, FairFit> eldest) {
              return size() > KEPT;
            }
          });

  private LastFits() {}

  /**
   * @throws FormingException as {@link FairFit#of}, which is not kept
   */
  static FairFit of(List<Station> stations, double toleranceMm) {
    var key = new Key(List.copyOf(stations), toleranceMm);
    FairFit kept = FITS.get(key);
    if (kept == null) {
      kept = FairFit.of(key.stations, toleranceMm);
      FITS.put(key, kept);
    }
    return kept;
  }
}
