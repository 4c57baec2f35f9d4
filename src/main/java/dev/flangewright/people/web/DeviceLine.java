package dev.flangewright.people.web;

import dev.flangewright.people.Device;
import dev.flangewright.people.LogTime;
import java.time.Instant;

/** A device as the page lists it. */
record DeviceLine(
    String mark, String system, String since, String seen, String stays, boolean here) {

  static DeviceLine of(Device device, Instant now) {
    return new DeviceLine(
        device.mark(),
        device.system(),
        LogTime.of(device.signedInAt(), now),
        LogTime.of(device.lastSeenAt(), now),
        device.remembered() ? "remembered" : "for a shift",
        device.here());
  }
}
