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
import quoin.commandline.calculation.Calculations;
import quoin.workflow.spi.Stage;

/**
 * What is done without a window, one thing a run: {@code quoin --nogui --calculate requests.json --answers answers.json}, where
 * {@code -} stands for standard in and out; or {@code quoin --nogui --sheet DAYFOLDER --to FILE.pdf}: with {@code --blank} the same
 * sheet to fill in by hand, with {@code --last-time} the page of last time, now and the change; {@code --paper} and
 * {@code --decimal} say how it is written.
 *
 * <p>All options are in one class: the platform's processor lists several classes in any order, and the module would not be the
 * same twice.
 */
@Messages({
    "calculate=--calculate <requests.json>: answer the calculations in this file; --calculate=- reads standard input",
    "answers=--answers <answers.json>: where the answers go; --answers=- is standard output",
    "needsBoth=--calculate and --answers must be given together",
    "sheet=--sheet <day folder>: write the set-up sheet of this day",
    "to=--to <file>: where the sheet goes; .pdf or .txt, or the figures alone as .csv or .json",
    "blank=--blank: with --sheet, leave the figures out, to fill in by hand",
    "lastTime=--last-time: with --sheet, the page of last time, now and the change instead of the sheet; .pdf only",
    "paper=--paper <a4|letter>: with --sheet, the paper of a .pdf; without it the one usual in this country",
    "decimal=--decimal <point|comma>: with --sheet, the decimal mark of a .csv; a comma parts the cells by semicolons. Without it a point",
    "blankOrLastTime=--blank and --last-time are two different pages; give one of them",
    "needsSheetAndTo=--sheet and --to must be given together: --sheet <day folder> --to <file.pdf>",
    "oneAtATime=--calculate and --sheet are two different things; give one of them"
})
public final class Arguments implements ArgsProcessor {

    private static final int NOT_DONE = 2;

    /** The request file. */
    @Arg(longName = "calculate")
    @Description(shortDescription = "#calculate")
    public String calculate;

    /** The answer file. */
    @Arg(longName = "answers")
    @Description(shortDescription = "#answers")
    public String answers;

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

    /** @return exit status, 0 = done; what is missing or too much is said on the standard error */
    int run(Env env) {
        boolean calculates = calculate != null || answers != null;
        boolean writes = sheet != null || to != null || blank || lastTime || paper != null || decimal != null;
        if (calculates && writes) {
            return refuse(env, Bundle.oneAtATime());
        }
        return calculates ? answer(env) : write(env);
    }

    private int answer(Env env) {
        if (calculate == null || answers == null) {
            return refuse(env, Bundle.needsBoth());
        }
        return new CalculatorRun(new Calculator(Calculations.all()), directory(env), env.getInputStream(),
                env.getOutputStream(), env.getErrorStream()).run(calculate, answers);
    }

    private int write(Env env) {
        if (sheet == null || to == null) {
            return refuse(env, Bundle.needsSheetAndTo());
        }
        if (blank && lastTime) {
            return refuse(env, Bundle.blankOrLastTime());
        }
        SheetRun.Page page = blank ? SheetRun.Page.BLANK : lastTime ? SheetRun.Page.LAST_TIME : SheetRun.Page.SHEET;
        return new SheetRun(directory(env), Lookup.getDefault().lookupAll(Stage.class), env.getErrorStream())
                .run(new SheetRun.Wish(sheet, to, page, paper, decimal));
    }

    private static int refuse(Env env, String remedy) {
        env.getErrorStream().println(remedy);
        return NOT_DONE;
    }

    private static Path directory(Env env) {
        return env.getCurrentDirectory().toPath();
    }
}
