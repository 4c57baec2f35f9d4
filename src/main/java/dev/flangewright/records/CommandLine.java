package dev.flangewright.records;

import dev.flangewright.people.Refused;
import dev.flangewright.records.command.RecordsCommand;
import dev.flangewright.records.command.WithoutPages;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** Takes a command instead of starting the web server. */
public final class CommandLine {

  private CommandLine() {}

  /** Whether the first word is one of the commands. */
  public static boolean isCommand(String[] arguments) {
    return arguments.length > 0 && RecordsCommand.NAMES.contains(arguments[0]);
  }

  /**
   * @param arguments the command, its argument, and settings that begin with {@code --}
   * @return 0 if it was done, 1 if it was refused or failed
   */
  public static int run(String[] arguments, PrintStream out) {
    List<String> words = Arrays.stream(arguments).filter(a -> !a.startsWith("--")).toList();
    try (ConfigurableApplicationContext program =
        new SpringApplicationBuilder(WithoutPages.class)
            .web(WebApplicationType.NONE)
            .bannerMode(Banner.Mode.OFF)
            .logStartupInfo(false)
            .properties(Map.of("logging.level.root", "warn"))
            .run(arguments)) {
      new RecordsCommand(program, out).run(words);
      return 0;
    } catch (Refused refused) {
      out.println(refused.getMessage());
    } catch (RuntimeException failed) {
      out.println("It failed: " + failed.getMessage());
    }
    return 1;
  }
}
