package dev.flangewright.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that drives a real Chromium. Without one it is skipped and says which package brings it;
 * where the environment has {@code CI=true} a missing browser is a failure instead.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@Tag("browser")
@ExtendWith(BrowserCondition.class)
public @interface NeedsBrowser {}
