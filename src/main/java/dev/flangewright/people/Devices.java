package dev.flangewright.people;

import java.util.Comparator;
import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Service;

/** Where whoever is signed in is signed in, so that a lost phone can be shut out. */
@Service
@PreAuthorize("isAuthenticated()")
public class Devices {

  private final FindByIndexNameSessionRepository<? extends Session> sessions;

  Devices(FindByIndexNameSessionRepository<? extends Session> sessions) {
    this.sessions = sessions;
  }

  /**
   * @param hereId the session that asks
   * @return the last seen first
   */
  public List<Device> mine(String hereId) {
    return sessions.findByPrincipalName(SignedIn.name()).values().stream()
        .filter(session -> !session.isExpired())
        .map(session -> device(session, hereId))
        .sorted(Comparator.comparing(Device::lastSeenAt).reversed())
        .toList();
  }

  /** Signs one of the reader's devices out; one that is not theirs, or is gone, is left alone. */
  public void end(String mark) {
    sessions.findByPrincipalName(SignedIn.name()).keySet().stream()
        .filter(id -> mark(id).equals(mark))
        .forEach(sessions::deleteById);
  }

  private static Device device(Session session, String hereId) {
    return new Device(
        mark(session.getId()),
        session.getAttributeOrDefault(SignedInFrom.SYSTEM, "not known"),
        session.getCreationTime(),
        session.getLastAccessedTime(),
        session.getMaxInactiveInterval().compareTo(SignedInFrom.LONGEST_VISIT) > 0,
        session.getId().equals(hereId));
  }

  private static String mark(String sessionId) {
    return new Secret(sessionId).digest();
  }
}
