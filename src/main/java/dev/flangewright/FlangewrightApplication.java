package dev.flangewright;

import dev.flangewright.records.CommandLine;
import dev.flangewright.records.VerifyFile;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Flangewright, or does what a command says without starting it. */
@SpringBootApplication
public class FlangewrightApplication {

  public static void main(String[] args) {
    if (args.length > 0 && args[0].equals(VerifyFile.COMMAND)) {
      System.exit(VerifyFile.of(List.of(args).subList(1, args.length), System.out));
    }
    if (CommandLine.isCommand(args)) {
      System.exit(CommandLine.run(args, System.out));
    }
    SpringApplication.run(FlangewrightApplication.class, args);
  }
}
