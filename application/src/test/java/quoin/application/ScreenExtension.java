package quoin.application;

import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Gives each test a screen of its own, or skips it with a plain line where there is none to be had. */
final class ScreenExtension implements ExecutionCondition, ParameterResolver, AfterTestExecutionCallback {

    private static final Namespace HERE = Namespace.create(ScreenExtension.class);

    /** Holds the screen in the test's store, which closes it with the test. */
    private record Held(Screen screen) implements AutoCloseable {
        @Override
        public void close() {
            screen.close();
        }
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (context.getTestMethod().isPresent()) {
            return ConditionEvaluationResult.enabled("Decided for the class");
        }
        return Screen.missing()
                .map(reason -> skipped("Skipped: window tests (" + reason + ")", context.getDisplayName()))
                .orElseGet(() -> ConditionEvaluationResult.enabled("A window can be shown"));
    }

    private static ConditionEvaluationResult skipped(String line, String name) {
        System.out.println(line + ": " + name);
        return ConditionEvaluationResult.disabled(line);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Screen.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getStore(HERE)
                .getOrComputeIfAbsent(Held.class, key -> new Held(Screen.open()), Held.class).screen();
    }

    @Override
    public void afterTestExecution(ExtensionContext context) {
        Held held = context.getStore(HERE).get(Held.class, Held.class);
        if (held != null && context.getExecutionException().isPresent()) {
            held.screen().shot("failed-" + context.getRequiredTestMethod().getName());
        }
    }
}
