package dev.flangewright;

import dev.flangewright.records.VerifyFile;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Flangewright, or looks through an exported journal without starting anything. */
@SpringBootApplication
public class FlangewrightApplication {

  public static void main(String[] args) {
    if (args.length > 0 && args[0].equals(VerifyFile.COMMAND)) {
      System.exit(VerifyFile.of(List.of(args).subList(1, args.length), System.out));
    }
    SpringApplication.run(FlangewrightApplication.class, args);
  }
}
