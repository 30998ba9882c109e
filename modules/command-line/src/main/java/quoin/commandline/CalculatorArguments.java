package quoin.commandline;

import java.io.PrintStream;
import java.nio.file.Path;
import org.netbeans.api.sendopts.CommandException;
import org.netbeans.spi.sendopts.Arg;
import org.netbeans.spi.sendopts.ArgsProcessor;
import org.netbeans.spi.sendopts.Description;
import org.netbeans.spi.sendopts.Env;
import org.openide.LifecycleManager;
import org.openide.util.NbBundle.Messages;
import quoin.commandline.calculation.Calculations;

/** {@code quoin --nogui --calculate requests.json --answers answers.json}; {@code -} stands for standard in and out. */
@Messages({
    "calculate=--calculate <requests.json>: answer the calculations in this file; --calculate=- reads standard input",
    "answers=--answers <answers.json>: where the answers go; --answers=- is standard output",
    "needsBoth=--calculate and --answers must be given together"
})
public final class CalculatorArguments implements ArgsProcessor {
    /** The request file. */
    @Arg(longName = "calculate")
    @Description(shortDescription = "#calculate")
    public String calculate;

    /** The answer file. */
    @Arg(longName = "answers")
    @Description(shortDescription = "#answers")
    public String answers;

    @Override
    public void process(Env env) throws CommandException {
        int status = run(env);
        LifecycleManager.getDefault().exit(status);
        if (status != CalculatorRun.ALL_ANSWERED) {
            throw new CommandException(status, "");
        }
    }

    private int run(Env env) {
        PrintStream error = env.getErrorStream();
        if (calculate == null || answers == null) {
            error.println(Bundle.needsBoth());
            return CalculatorRun.NOT_READ;
        }
        Path directory = env.getCurrentDirectory().toPath();
        PrintStream out = env.getOutputStream();
        return new CalculatorRun(new Calculator(Calculations.all()), directory, env.getInputStream(), out, error)
                .run(calculate, answers);
    }
}
