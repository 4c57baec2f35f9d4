package dev.flangewright.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.env.ConfigurableEnvironment;

/**
 * Refuses to open an H2 file on a network share, before it is opened: such shares do not lock and
 * flush as the engine needs it, and the file is damaged sooner or later.
 */
class RefuseNetworkShare implements EnvironmentPostProcessor {

  private static final String IN_A_FILE = "jdbc:h2:file:";

  /** Types of file systems as Linux, the BSDs, macOS and Windows name them. */
  private static final Set<String> SHARES =
      Set.of(
          "nfs",
          "nfs3",
          "nfs4",
          "cifs",
          "smb",
          "smb2",
          "smb3",
          "smbfs",
          "afpfs",
          "afs",
          "ncpfs",
          "webdav",
          "davfs",
          "fuse.sshfs",
          "fuse.davfs2",
          "fuse.rclone",
          "fuse.s3fs",
          "glusterfs",
          "fuse.glusterfs",
          "ceph");

  @Override
  public void postProcessEnvironment(
      ConfigurableEnvironment environment, SpringApplication application) {
    folder(environment.getProperty("spring.datasource.url", ""))
        .flatMap(RefuseNetworkShare::share)
        .ifPresent(
            type -> {
              throw new OnNetworkShare(type);
            });
  }

  /** Where the database file of an address lies; empty if it is in no file. */
  static Optional<Path> folder(String url) {
    if (!url.startsWith(IN_A_FILE)) {
      return Optional.empty();
    }
    String file = url.substring(IN_A_FILE.length()).split(";", 2)[0];
    String atHome =
        file.startsWith("~") ? System.getProperty("user.home") + file.substring(1) : file;
    return Optional.ofNullable(Path.of(atHome).toAbsolutePath().getParent());
  }

  /** The type of the share that a folder is on, or its nearest parent that is there. */
  private static Optional<String> share(Path folder) {
    Path there = folder;
    while (there.getParent() != null && Files.notExists(there)) {
      there = there.getParent();
    }
    try {
      String type = Files.getFileStore(there).type();
      return isShare(type) ? Optional.of(type) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty(); // the engine itself will say what is wrong with the folder
    }
  }

  static boolean isShare(String type) {
    return SHARES.contains(type.toLowerCase(Locale.ROOT));
  }
}
