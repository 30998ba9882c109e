package quoin.ballast;

import java.awt.FlowLayout;
import java.awt.Font;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.car.ReadingId;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Entry;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DayWindow;
import quoin.workbench.Looks;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;

/** What the day is set to: every target with its tolerance, and the kinds of cross weight side by side. */
@TopComponent.Description(preferredID = "day-targets", iconBase = "quoin/workbench/icons/bullseye.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 690)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Targets", preferredID = "day-targets")
@ActionID(category = "Day", id = "quoin.ballast.TargetsWindow")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 310, separatorBefore = 305),
    @ActionReference(path = "Shortcuts", name = "O-7")})
@Messages({"CTL_Targets=Tar&gets", "targets.title=Targets", "targets.each=Targets of the day", "targets.aims=Cross weight: what each aim gives",
    "targets.record=Reco&rd the changed targets", "targets.keep=&Keep them on the car",
    "targets.note=Front share and left share follow from where the mass is: set them by moving mass (Alt+8), before the cross weight. "
            + "Cross here is RF+LR; other people quote LF+RR, which is 100 less it. 50 % is a habit, not a law: a driver on one side makes "
            + "equal diagonals, equal fronts and the same front share three different aims.",
    "targets.recorded=Recorded.", "targets.nothing=Nothing was changed.", "targets.kept=Kept on the car: later days begin with these targets."})
public final class TargetsWindow extends DayWindow {

    private static final long serialVersionUID = 1L;

    private final TargetTable table = new TargetTable();
    private final AimsPanel aims = new AimsPanel(CurrentDay.inUse());
    private final WrapText answer = new WrapText("", 1, Font.BOLD);

    public TargetsWindow() {
        super(Bundle.targets_title(), CurrentDay.inUse(), Stay.UNTIL_CLOSED);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.4)));
        buttons.add(Looks.button(Bundle.targets_record(), this::record));
        buttons.add(Looks.button(Bundle.targets_keep(), this::keep));
        JPanel left = Looks.section(Bundle.targets_each(), Looks.column(buttons, answer, table));
        JPanel right = Looks.column(Looks.section(Bundle.targets_aims(), aims), Looks.section("", new WrapText(Bundle.targets_note())));
        fill(WidthOfTheWindow.scrolledFromTheTop(Looks.twoColumns(left, right, 0.55)), Bundle.mass_noDay(), Bundle.mass_noDayRemedy());
    }

    private void record() {
        Optional<Map<ReadingId, Target>> changed = table.changed();
        if (changed.isEmpty()) {
            answer.setText("");
            return;
        }
        boolean all = true;
        for (Map.Entry<ReadingId, Target> target : new LinkedHashMap<>(changed.get()).entrySet()) {
            all &= CurrentDay.inUse().record("", h -> new Entry.TargetSet(h, target.getKey(), target.getValue()));
        }
        answer.setText(!all ? "" : changed.get().isEmpty() ? Bundle.targets_nothing() : Bundle.targets_recorded());
    }

    private void keep() {
        Optional<DaySnapshot> day = CurrentDay.inUse().snapshot();
        if (day.isPresent()) {
            Targets kept = day.get().day().targets();
            boolean done = CurrentDay.inUse().keepOnCar(car -> car.withTargets(kept));
            answer.setText(done ? Bundle.targets_kept() : "");
        }
    }

    @Override
    protected void dayChanged() {
        Optional<DaySnapshot> day = CurrentDay.inUse().snapshot();
        if (day.isPresent() && isShowing()) {
            table.show(day.get());
            aims.show(day.get());
        }
    }

    @Override
    protected void componentShowing() {
        answer.setText("");
        refresh();
    }

    @Override
    protected void componentHidden() {
        aims.stop();
    }

    @Override
    protected void componentActivated() {
        table.toFirst();
    }
}
