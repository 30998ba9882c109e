package quoin.commandline;

import java.io.PrintWriter;
import java.util.Set;
import org.netbeans.CLIHandler;
import org.openide.util.lookup.ServiceProvider;

/**
 * Lets {@code --calculate -} stand for standard input, as everywhere. The platform takes a lone {@code -} for an option
 * and refuses it, but takes {@code --calculate=-}: so this comes before the platform's own reading and joins the two.
 */
@ServiceProvider(service = CLIHandler.class, position = 100)
public final class StandardStreams extends CLIHandler {
    private static final Set<String> OPTIONS = Set.of("--calculate", "--answers");

    public StandardStreams() {
        super(WHEN_EXTRA);
    }

    @Override
    protected int cli(Args args) {
        join(args.getArguments());
        return 0;
    }

    /** Joins in place; what was joined to the word before is left null, which the platform reads over. */
    static void join(String[] words) {
        for (int i = 1; i < words.length; i++) {
            if ("-".equals(words[i]) && words[i - 1] != null && OPTIONS.contains(words[i - 1])) {
                words[i - 1] += "=-";
                words[i] = null;
            }
        }
    }

    @Override
    protected void usage(PrintWriter out) {
        // the options are explained where they are read
    }
}
