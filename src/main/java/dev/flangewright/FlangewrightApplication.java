package dev.flangewright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Flangewright. */
@SpringBootApplication
public class FlangewrightApplication {

  public static void main(String[] args) {
    SpringApplication.run(FlangewrightApplication.class, args);
  }
}
