package quoin.commandline;

import java.nio.file.Path;
import org.netbeans.api.sendopts.CommandException;
import org.netbeans.spi.sendopts.Arg;
import org.netbeans.spi.sendopts.ArgsProcessor;
import org.netbeans.spi.sendopts.Description;
import org.netbeans.spi.sendopts.Env;
import org.openide.LifecycleManager;
import org.openide.util.Lookup;
import org.openide.util.NbBundle.Messages;
import quoin.workflow.spi.Stage;

/** {@code quoin --nogui --sheet DAYFOLDER --to FILE.pdf}; with {@code --blank} the same sheet to fill in by hand. */
@Messages({
    "sheet=--sheet <day folder>: write the set-up sheet of this day",
    "to=--to <file>: where the sheet goes; .pdf or .txt, or the figures alone as .csv or .json",
    "blank=--blank: with --sheet, leave the figures out, to fill in by hand",
    "needsSheetAndTo=--sheet and --to must be given together: --sheet <day folder> --to <file.pdf>"})
public final class SheetArguments implements ArgsProcessor {

    /** The day's folder. */
    @Arg(longName = "sheet")
    @Description(shortDescription = "#sheet")
    public String sheet;

    /** The file written. */
    @Arg(longName = "to")
    @Description(shortDescription = "#to")
    public String to;

    /** Leaves the figures out. */
    @Arg(longName = "blank")
    @Description(shortDescription = "#blank")
    public boolean blank;

    @Override
    public void process(Env env) throws CommandException {
        int status = run(env);
        LifecycleManager.getDefault().exit(status);
        if (status != 0) {
            throw new CommandException(status, "");
        }
    }

    private int run(Env env) {
        if (sheet == null || to == null) {
            env.getErrorStream().println(Bundle.needsSheetAndTo());
            return SheetRun.NOT_WRITTEN;
        }
        Path directory = env.getCurrentDirectory().toPath();
        return new SheetRun(directory, Lookup.getDefault().lookupAll(Stage.class), env.getErrorStream()).run(sheet, to, blank);
    }
}
