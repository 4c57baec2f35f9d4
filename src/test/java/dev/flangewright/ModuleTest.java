package dev.flangewright;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** The arrows between the modules, as their {@code package-info.java} draw them. */
class ModuleTest {

  @Test
  void every_module_keeps_to_its_arrows() {
    ApplicationModules.of(FlangewrightApplication.class).verify();
  }
}
