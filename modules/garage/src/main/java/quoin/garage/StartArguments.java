package quoin.garage;

import java.nio.file.Path;
import org.netbeans.api.sendopts.CommandException;
import org.netbeans.spi.sendopts.Arg;
import org.netbeans.spi.sendopts.ArgsProcessor;
import org.netbeans.spi.sendopts.Description;
import org.netbeans.spi.sendopts.Env;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;

/** {@code quoin --demo}, {@code quoin --open DAYFOLDER}, {@code quoin --library FOLDER}. */
@Messages({
    "option.demo=--demo: open a rehearsal day with the practice car",
    "option.open=--open <folder>: open the day in this folder",
    "option.library=--library <folder>: keep cars and days in this folder"})
public final class StartArguments implements ArgsProcessor {

    /** Opens the demo day. */
    @Arg(longName = "demo")
    @Description(shortDescription = "#option.demo")
    public boolean demo;

    /** A day's folder. */
    @Arg(longName = "open")
    @Description(shortDescription = "#option.open")
    public String open;

    /** The library's folder. */
    @Arg(longName = "library")
    @Description(shortDescription = "#option.library")
    public String library;

    @Override
    public void process(Env env) throws CommandException {
        Path here = env.getCurrentDirectory().toPath();
        WindowManager.getDefault().invokeWhenUIReady(() -> begin(here));
    }

    private void begin(Path here) {
        GarageDoor door = GarageDoor.inUse();
        if (library != null) {
            door.desk().useLibrary(here.resolve(library));
        }
        if (open != null) {
            door.openAtStart(here.resolve(open));
        } else if (demo) {
            door.demoAtStart();
        }
    }
}
