package groupwright.workbench.shell;

import java.awt.GraphicsEnvironment;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A test that opens the window; skipped, and said so, where there is no display. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
@interface NeedsDisplay {
    /** Looks for a display. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (!GraphicsEnvironment.isHeadless()) {
                return ConditionEvaluationResult.enabled("there is a display");
            }
            String reason =
                    context.getDisplayName() + " skipped: there is no display; run it under one, as .ci/run does";
            System.err.println(reason);
            return ConditionEvaluationResult.disabled(reason);
        }
    }
}
