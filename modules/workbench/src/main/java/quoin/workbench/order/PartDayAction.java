package quoin.workbench.order;

import java.awt.Component;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.InertText;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Say;
import quoin.workbench.WrapText;
import quoin.workflow.PartDay;
import quoin.workflow.spi.Stage;

/** Declares the open day to be for part of the job, or closes it as such. */
@ActionID(category = "Day", id = "quoin.workbench.order.PartDayAction")
@ActionRegistration(displayName = "#CTL_PartDay", iconBase = "quoin/workbench/icons/pie-chart.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 200, separatorBefore = 190),
    @ActionReference(path = "Shortcuts", name = "D-J")})
@Messages({"CTL_PartDay=&Part of the Job...", "part.title=What this day is for",
    "part.explain=A day for part of the job begins at any of its stages. It closes without the stages left out, and says in words what it did not "
            + "prove. Readings taken without their conditions (pads, driver, bars) still say so.",
    "part.job=Job", "part.whole=the whole job", "part.weigh=weigh only", "part.toe=toe only", "part.knock=check after a knock",
    "part.own=other stages", "part.words=In your words", "part.stages=Stages that belong to it",
    "# {0} - open points", "part.close=Close it now as part of the job. Not proved: {0}", "part.closeShort=Close the da&y now as what it is",
    "part.noDay=Open a day first, or begin a new one (Ctrl+N)."})
public final class PartDayAction implements ActionListener {

    private static final int COLUMNS = 24;

    /** A job that comes up often, by the stable ids of its stages. */
    private record Job(String words, List<String> stages) {
        @Override
        public String toString() {
            return words;
        }
    }

    private final CurrentDay current = CurrentDay.inUse();
    private final List<JCheckBox> boxes = new ArrayList<>();
    private final JTextField words = new JTextField(COLUMNS);
    private final JCheckBox close = new JCheckBox();

    @Override
    public void actionPerformed(ActionEvent event) {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty()) {
            Say.message(Bundle.part_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        DialogDescriptor ask = new DialogDescriptor(form(day.get()), Bundle.part_title());
        if (DialogDisplayer.getDefault().notify(ask) == NotifyDescriptor.OK_OPTION) {
            declare(day.get());
        }
    }

    private JPanel form(DaySnapshot day) {
        List<Stage> stages = day.stages();
        List<String> now = current.partDay().map(PartDay::stages).orElse(stages.stream().map(Stage::id).toList());
        boxes.clear();
        List<Component> lines = new ArrayList<>();
        for (Stage stage : stages) {
            JCheckBox box = InertText.in(new JCheckBox());
            box.setText(stage.title());
            box.setSelected(now.contains(stage.id()));
            boxes.add(box);
            lines.add(box);
        }
        words.setText(current.partDay().map(PartDay::words).orElse(""));
        words.getAccessibleContext().setAccessibleName(Bundle.part_words());
        JComboBox<Job> jobs = new JComboBox<>(jobs(stages).toArray(Job[]::new));
        jobs.setRenderer(new PlainListRenderer());
        jobs.getAccessibleContext().setAccessibleName(Bundle.part_job());
        jobs.setSelectedIndex(current.partDay().isPresent() ? jobs.getItemCount() - 1 : 0);
        jobs.addActionListener(e -> choose((Job) jobs.getSelectedItem(), stages));
        WrapText explain = new WrapText(Bundle.part_explain());
        explain.wide(COLUMNS * 2);
        JPanel form = Looks.column(explain, Looks.label(Bundle.part_job(), 1, Font.BOLD), jobs, Looks.label(Bundle.part_stages(), 1, Font.BOLD),
                Looks.column(lines.toArray(Component[]::new)), Looks.label(Bundle.part_words(), 1, Font.BOLD), words);
        current.partDay().filter(p -> day.day().closed().isEmpty()).ifPresent(p -> {
            org.openide.awt.Mnemonics.setLocalizedText(close, Bundle.part_closeShort());
            close.setSelected(false);
            form.add(close);
            WrapText open = new WrapText(Bundle.part_close(String.join("; ", p.notProved())));
            open.wide(COLUMNS * 2);
            open.setAlignmentX(Component.LEFT_ALIGNMENT);
            form.add(open);
        });
        form.setBorder(Looks.padding(1, 1));
        return form;
    }

    private static List<Job> jobs(List<Stage> stages) {
        List<String> all = stages.stream().map(Stage::id).toList();
        return List.of(new Job(Bundle.part_whole(), all), new Job(Bundle.part_weigh(), List.of("corner-weights")),
                new Job(Bundle.part_toe(), List.of("wheel-angles")),
                new Job(Bundle.part_knock(), List.of("ride-height", "corner-weights", "wheel-angles")), new Job(Bundle.part_own(), List.of()));
    }

    private void choose(Job job, List<Stage> stages) {
        if (job.stages().isEmpty()) {
            words.setText("");
            return;
        }
        for (int i = 0; i < stages.size(); i++) {
            boxes.get(i).setSelected(job.stages().contains(stages.get(i).id()));
        }
        words.setText(job.stages().size() == stages.size() ? "" : job.words());
    }

    private void declare(DaySnapshot day) {
        List<Stage> stages = day.stages();
        List<String> chosen = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            if (boxes.get(i).isSelected()) {
                chosen.add(stages.get(i).id());
            }
        }
        String value = PartDay.value(stages, chosen);
        boolean was = day.day().condition(Conditions.PART).orElse(Conditions.WHOLE).equals(value);
        boolean same = was && current.partDay().map(PartDay::words).orElse("").equals(words.getText().strip());
        boolean kept = same || current.record("", h -> new Entry.Condition(h, Conditions.PART, value, words.getText().strip()));
        if (kept && close.isSelected() && current.partDay().isPresent()) {
            current.closeDay(Optional.empty());
        }
    }
}
