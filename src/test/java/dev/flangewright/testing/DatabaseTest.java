package dev.flangewright.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.core.annotation.AliasFor;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test of the whole application on a fresh, empty database. The build runs it twice: on H2 and on
 * PostgreSQL, see {@link TestDatabase}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@Tag("database")
public @interface DatabaseTest {

  /** Whether a real server listens; without one, requests go through {@code MockMvc}. */
  @AliasFor(annotation = SpringBootTest.class)
  WebEnvironment webEnvironment() default WebEnvironment.MOCK;

  /** Settings of this test alone, as {@code key=value}. */
  @AliasFor(annotation = SpringBootTest.class)
  String[] properties() default {};
}
