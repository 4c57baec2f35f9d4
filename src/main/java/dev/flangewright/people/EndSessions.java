package dev.flangewright.people;

import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Signs an account out everywhere once its access has changed: a session carries the permissions it
 * was begun with, and a stolen one must not outlive the password.
 */
@Component
class EndSessions {

  private final FindByIndexNameSessionRepository<? extends Session> sessions;

  EndSessions(FindByIndexNameSessionRepository<? extends Session> sessions) {
    this.sessions = sessions;
  }

  @TransactionalEventListener
  void on(AccessChanged changed) {
    sessions.findByPrincipalName(changed.username()).keySet().forEach(sessions::deleteById);
  }
}
