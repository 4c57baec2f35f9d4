package dev.flangewright.records.capture;

import dev.flangewright.records.Change;
import dev.flangewright.records.FieldChange;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.event.spi.AbstractCollectionEvent;
import org.hibernate.event.spi.PostCollectionRecreateEvent;
import org.hibernate.event.spi.PostCollectionRecreateEventListener;
import org.hibernate.event.spi.PreCollectionRemoveEvent;
import org.hibernate.event.spi.PreCollectionRemoveEventListener;
import org.hibernate.event.spi.PreCollectionUpdateEvent;
import org.hibernate.event.spi.PreCollectionUpdateEventListener;
import org.hibernate.persister.collection.CollectionPersister;
import org.hibernate.persister.entity.EntityPersister;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Hears of lists of values that belong to a row and are stored in a table of their own. */
@Component
class CaptureLists
    implements PostCollectionRecreateEventListener,
        PreCollectionUpdateEventListener,
        PreCollectionRemoveEventListener {

  private static final long serialVersionUID = 1L;

  private final transient TakeDown journal;

  CaptureLists(TakeDown journal) {
    this.journal = journal;
  }

  @Override
  public void onPostRecreateCollection(PostCollectionRecreateEvent event) {
    take(event, null, event.getCollection());
  }

  @Override
  public void onPreUpdateCollection(PreCollectionUpdateEvent event) {
    take(event, event.getCollection().getStoredSnapshot(), event.getCollection());
  }

  @Override
  public void onPreRemoveCollection(PreCollectionRemoveEvent event) {
    take(event, event.getCollection().getStoredSnapshot(), null);
  }

  private void take(AbstractCollectionEvent event, @Nullable Object from, @Nullable Object to) {
    CollectionPersister list = event.getCollectionPersister();
    Object owner = event.getAffectedOwnerOrNull();
    if (owner == null || !isTakenDown(list)) {
      return;
    }
    FieldChange change = new FieldChange(name(list), text(from), text(to));
    if (!Objects.equals(change.from(), change.to())) {
      EntityPersister rows = list.getOwnerEntityPersister();
      Object id = Objects.requireNonNull(event.getAffectedOwnerIdOrNull());
      journal.change(event.getSession(), rows, owner, id, Change.CHANGED, List.of(change));
    }
  }

  /** Rows that point back at their owner are taken down as rows. */
  static boolean isTakenDown(CollectionPersister list) {
    String owner = list.getOwnerEntityPersister().getMappedClass().getSimpleName();
    return !list.isOneToMany()
        && !list.isInverse()
        && !LeftOut.entity(owner)
        && !LeftOut.field(owner, name(list));
  }

  private static String name(CollectionPersister list) {
    return list.getRole().substring(list.getRole().lastIndexOf('.') + 1);
  }

  /** Null if there is none. Hibernate keeps what a set was as a map from each value to itself. */
  private static @Nullable String text(@Nullable Object values) {
    if (values instanceof Map<?, ?> map) {
      return sorted(map.entrySet().stream().map(CaptureLists::entry));
    }
    if (values instanceof Set<?> set) {
      return sorted(set.stream().map(ValueText::of));
    }
    return values instanceof Collection<?> list
        ? list.stream().map(ValueText::of).collect(Collectors.joining(", "))
        : null;
  }

  private static @Nullable String entry(Map.Entry<?, ?> entry) {
    String value = ValueText.of(entry.getValue());
    String key = ValueText.of(entry.getKey());
    return Objects.equals(key, value) ? value : key + ": " + value;
  }

  /** However it happens to lie in memory. */
  private static String sorted(Stream<@Nullable String> values) {
    return values.map(String::valueOf).sorted().collect(Collectors.joining(", "));
  }
}
