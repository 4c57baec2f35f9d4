package dev.flangewright.records.capture;

import java.util.List;
import org.hibernate.boot.Metadata;
import org.hibernate.boot.spi.BootstrapContext;
import org.hibernate.engine.spi.SessionFactoryImplementor;
import org.hibernate.event.service.spi.EventListenerRegistry;
import org.hibernate.event.spi.EventType;
import org.hibernate.integrator.spi.Integrator;
import org.hibernate.jpa.boot.spi.IntegratorProvider;
import org.hibernate.jpa.boot.spi.JpaSettings;
import org.springframework.boot.hibernate.autoconfigure.HibernatePropertiesCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Has Hibernate tell the journal of what it writes, from its first statement on. */
@Configuration
class JournalCapture {

  @Bean
  HibernatePropertiesCustomizer journalled(CaptureRows rows, CaptureLists lists) {
    IntegratorProvider provider = () -> List.of(listeners(rows, lists));
    return properties -> properties.put(JpaSettings.INTEGRATOR_PROVIDER, provider);
  }

  private static Integrator listeners(CaptureRows rows, CaptureLists lists) {
    return new Integrator() {
      @Override
      public void integrate(
          Metadata metadata, BootstrapContext context, SessionFactoryImplementor factory) {
        EventListenerRegistry registry = factory.getEventEngine().getListenerRegistry();
        registry.getEventListenerGroup(EventType.POST_INSERT).appendListener(rows);
        registry.getEventListenerGroup(EventType.POST_UPDATE).appendListener(rows);
        registry.getEventListenerGroup(EventType.POST_DELETE).appendListener(rows);
        registry.getEventListenerGroup(EventType.POST_COLLECTION_RECREATE).appendListener(lists);
        registry.getEventListenerGroup(EventType.PRE_COLLECTION_UPDATE).appendListener(lists);
        registry.getEventListenerGroup(EventType.PRE_COLLECTION_REMOVE).appendListener(lists);
      }
    };
  }
}
