package dev.flangewright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import dev.flangewright.testing.NeedsBrowser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.ActiveProfiles;

/**
 * Tests that share one installation with the demo in it, the same as that of {@link JourneyTest},
 * and one browser. Each works in a build of its own.
 */
@SpringBootTest(
    webEnvironment = WebEnvironment.RANDOM_PORT,
    properties = "spring.datasource.url=jdbc:h2:mem:journey;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@NeedsBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class InTheWorkshop {

  @LocalServerPort private int port;
  @Autowired ApplicationContext application;
  @Autowired JdbcTemplate database;
  Browsing browsing;

  @BeforeAll
  void openBrowser() {
    browsing = new Browsing(port);
  }

  @AfterAll
  void closeBrowser() {
    browsing.close();
  }

  /** Somebody of the demo at a phone, signed in. */
  Page phoneOf(String name) {
    return Browsing.signedIn(browsing.phone(), name);
  }

  Page phoneOf(String name, boolean scripts) {
    BrowserContext phone = scripts ? browsing.phone() : browsing.phoneWithoutScripts();
    return Browsing.signedIn(phone, name);
  }
}
