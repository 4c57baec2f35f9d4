package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.SpringApplication;
import org.springframework.mock.env.MockEnvironment;

class RefuseNetworkShareTest {

  @ParameterizedTest
  @ValueSource(strings = {"nfs", "nfs4", "cifs", "smbfs", "SMB3", "fuse.sshfs"})
  void a_share_is_known_by_the_type_of_its_file_system(String type) {
    assertThat(RefuseNetworkShare.isShare(type)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"ext4", "xfs", "btrfs", "zfs", "overlay", "tmpfs", "NTFS", "apfs", "fuseblk"})
  void a_disk_of_the_machine_is_none(String type) {
    assertThat(RefuseNetworkShare.isShare(type)).isFalse();
  }

  @Test
  void the_folder_is_read_out_of_the_address_of_the_database() {
    assertThat(RefuseNetworkShare.folder("jdbc:h2:file:/srv/shop/flangewright;WRITE_DELAY=0"))
        .contains(Path.of("/srv/shop"));
    assertThat(RefuseNetworkShare.folder("jdbc:h2:file:./data/flangewright"))
        .contains(Path.of("data").toAbsolutePath().getParent().resolve("./data"));
    assertThat(RefuseNetworkShare.folder("jdbc:postgresql://db/flangewright")).isEmpty();
    assertThat(RefuseNetworkShare.folder("jdbc:h2:mem:demo")).isEmpty();
  }

  @Test
  void a_folder_that_is_not_there_yet_is_judged_by_where_it_will_be(@TempDir Path disk) {
    MockEnvironment environment =
        new MockEnvironment()
            .withProperty("spring.datasource.url", "jdbc:h2:file:" + disk + "/not/yet/there");
    assertThatCode(
            () ->
                new RefuseNetworkShare()
                    .postProcessEnvironment(environment, new SpringApplication()))
        .doesNotThrowAnyException();
  }
}
