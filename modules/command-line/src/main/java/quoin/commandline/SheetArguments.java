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

/**
 * {@code quoin --nogui --sheet DAYFOLDER --to FILE.pdf}: with {@code --blank} the same sheet to fill in by hand, with
 * {@code --last-time} the page of last time, now and the change; {@code --paper} and {@code --decimal} say how it is written.
 */
@Messages({
    "sheet=--sheet <day folder>: write the set-up sheet of this day",
    "to=--to <file>: where the sheet goes; .pdf or .txt, or the figures alone as .csv or .json",
    "blank=--blank: with --sheet, leave the figures out, to fill in by hand",
    "lastTime=--last-time: with --sheet, the page of last time, now and the change instead of the sheet; .pdf only",
    "paper=--paper <a4|letter>: with --sheet, the paper of a .pdf; without it the one usual in this country",
    "decimal=--decimal <point|comma>: with --sheet, the decimal mark of a .csv; a comma parts the cells by semicolons. Without it a point",
    "blankOrLastTime=--blank and --last-time are two different pages; give one of them",
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

    /** The page of last time, now and the change. */
    @Arg(longName = "last-time")
    @Description(shortDescription = "#lastTime")
    public boolean lastTime;

    /** The paper of a PDF. */
    @Arg(longName = "paper")
    @Description(shortDescription = "#paper")
    public String paper;

    /** The decimal mark of a CSV. */
    @Arg(longName = "decimal")
    @Description(shortDescription = "#decimal")
    public String decimal;

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
        if (blank && lastTime) {
            env.getErrorStream().println(Bundle.blankOrLastTime());
            return SheetRun.NOT_WRITTEN;
        }
        SheetRun.Page page = blank ? SheetRun.Page.BLANK : lastTime ? SheetRun.Page.LAST_TIME : SheetRun.Page.SHEET;
        Path directory = env.getCurrentDirectory().toPath();
        return new SheetRun(directory, Lookup.getDefault().lookupAll(Stage.class), env.getErrorStream())
                .run(new SheetRun.Wish(sheet, to, page, paper, decimal));
    }
}
