package dev.flangewright;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one clock, handed to whoever needs the time, so that tests can set it. */
@Configuration
class Clocks {

  @Bean
  Clock clock() {
    return Clock.systemUTC();
  }
}
