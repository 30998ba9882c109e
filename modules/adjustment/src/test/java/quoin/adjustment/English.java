package quoin.adjustment;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs each test of a class in English, for those that look at words; afterwards the language is as it was. */
final class English implements BeforeEachCallback, AfterEachCallback {

    private static final ExtensionContext.Namespace KEPT = ExtensionContext.Namespace.create(English.class);

    @Override
    public void beforeEach(ExtensionContext test) {
        test.getStore(KEPT).put(Locale.class, Locale.getDefault());
        Locale.setDefault(Locale.ENGLISH);
    }

    @Override
    public void afterEach(ExtensionContext test) {
        Locale.setDefault(test.getStore(KEPT).get(Locale.class, Locale.class));
    }
}
