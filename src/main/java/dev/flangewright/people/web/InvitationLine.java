package dev.flangewright.people.web;

import dev.flangewright.people.Invitation;
import dev.flangewright.people.LogTime;

/** An invitation as the page lists it. */
record InvitationLine(long id, String role, String madeBy, String goodUntil) {

  static InvitationLine of(Invitation invitation) {
    return new InvitationLine(
        invitation.id(),
        invitation.role().word(),
        invitation.madeBy(),
        LogTime.moment(invitation.expiresAt()));
  }
}
