package quoin.application;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test class that drives the application in a window. Its methods get a {@link Screen} as parameter; where no window
 * can be shown, the class is skipped and says so. A failed test leaves a picture behind.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(ScreenExtension.class)
@interface WindowTest {
}
