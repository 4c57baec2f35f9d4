package dev.flangewright.testing;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionConfigurationException;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Lets a {@link NeedsBrowser} test run where there is a browser. */
final class BrowserCondition implements ExecutionCondition {

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    return evaluate(Chromium.find(), Boolean.parseBoolean(System.getenv("CI")));
  }

  static ConditionEvaluationResult evaluate(Optional<Path> browser, boolean required) {
    if (browser.isPresent()) {
      return ConditionEvaluationResult.enabled("Chromium is " + browser.get());
    }
    if (required) {
      throw new ExtensionConfigurationException(Chromium.MISSING);
    }
    return ConditionEvaluationResult.disabled(Chromium.MISSING);
  }
}
