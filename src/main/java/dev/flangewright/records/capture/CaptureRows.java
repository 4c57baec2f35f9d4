package dev.flangewright.records.capture;

import dev.flangewright.records.Change;
import dev.flangewright.records.FieldChange;
import java.util.List;
import org.hibernate.event.spi.AbstractPostDatabaseOperationEvent;
import org.hibernate.event.spi.PostDeleteEvent;
import org.hibernate.event.spi.PostDeleteEventListener;
import org.hibernate.event.spi.PostInsertEvent;
import org.hibernate.event.spi.PostInsertEventListener;
import org.hibernate.event.spi.PostUpdateEvent;
import org.hibernate.event.spi.PostUpdateEventListener;
import org.hibernate.persister.entity.EntityPersister;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Hears of every row that Hibernate inserts, updates or deletes. */
@Component
class CaptureRows
    implements PostInsertEventListener, PostUpdateEventListener, PostDeleteEventListener {

  private static final long serialVersionUID = 1L;

  private final transient TakeDown journal;

  CaptureRows(TakeDown journal) {
    this.journal = journal;
  }

  @Override
  public void onPostInsert(PostInsertEvent event) {
    take(event, Change.MADE, null, event.getState());
  }

  @Override
  public void onPostUpdate(PostUpdateEvent event) {
    take(event, Change.CHANGED, event.getOldState(), event.getState());
  }

  @Override
  public void onPostDelete(PostDeleteEvent event) {
    take(event, Change.REMOVED, event.getDeletedState(), null);
  }

  private void take(
      AbstractPostDatabaseOperationEvent event,
      String done,
      @Nullable Object @Nullable [] from,
      @Nullable Object @Nullable [] to) {
    EntityPersister rows = event.getPersister();
    Names names = new Names(event.getSession());
    if (!LeftOut.entity(names.entity(rows))) {
      List<FieldChange> changes = new Fields(rows, names).between(from, to);
      journal.change(event.getSession(), rows, event.getEntity(), event.getId(), done, changes);
    }
  }

  @Override
  public boolean requiresPostCommitHandling(EntityPersister rows) {
    return false;
  }
}
