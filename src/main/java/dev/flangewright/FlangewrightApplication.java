package dev.flangewright;

import dev.flangewright.records.CommandLine;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Flangewright, or does what a command says without starting it. */
@SpringBootApplication
public class FlangewrightApplication {

  public static void main(String[] args) {
    if (CommandLine.isCommand(args)) {
      System.exit(CommandLine.run(args, System.out));
    }
    SpringApplication.run(FlangewrightApplication.class, args);
  }
}
