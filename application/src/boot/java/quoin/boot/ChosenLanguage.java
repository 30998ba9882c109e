package quoin.boot;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import org.netbeans.CLIHandler;

/**
 * Speaks the chosen language before the platform looks for its modules: which texts a module of the platform gets is settled when
 * its jar is found, so File, Edit and Window would keep the computer's language otherwise. Lies in the {@code core} folder, where
 * the platform looks for what is asked first. A language on the command line, {@code --locale de}, goes before the choice.
 */
public final class ChosenLanguage extends CLIHandler {

    private static final String USER = "--userdir";

    public ChosenLanguage() {
        super(WHEN_BOOT);
    }

    @Override
    protected int cli(Args args) {
        // what another handler has taken is null
        List<String> given = Arrays.asList(args.getArguments());
        int at = given.indexOf(USER);
        String user = at >= 0 && at + 1 < given.size() ? given.get(at + 1) : System.getProperty("netbeans.user");
        boolean named = given.contains("--locale") || System.getProperty("sun.java.command", "").contains("--locale");
        if (user != null && !named) {
            String code = kept(Path.of(user, "etc", "language.properties"));
            if (code.matches("[a-z]{2,3}") && !code.equals(Locale.getDefault().getLanguage())) {
                Locale.setDefault(Locale.forLanguageTag(code));
            }
        }
        return 0;
    }

    /** The language that Tools, Units and Language wrote; empty where there is none. */
    private static String kept(Path file) {
        Properties properties = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            properties.load(in);
        } catch (IOException | IllegalArgumentException e) {
            // nothing was chosen, or it cannot be read: as the computer
            return "";
        }
        return properties.getProperty("language", "");
    }

    @Override
    protected void usage(PrintWriter words) {
        // takes no option of its own
    }
}
