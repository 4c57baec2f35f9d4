package dev.flangewright.records.command;

import dev.flangewright.records.backup.BackUp;
import dev.flangewright.records.backup.BackupFolder;
import dev.flangewright.records.backup.BackupSettings;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The database of the settings and what backs it up; no pages, no entities, no migration. */
@Configuration(proxyBeanMethods = false)
@ImportAutoConfiguration(DataSourceAutoConfiguration.class)
@Import({BackUp.class, BackupFolder.class, BackupSettings.class})
public class WithoutPages {}
