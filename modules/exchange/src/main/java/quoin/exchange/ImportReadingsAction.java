package quoin.exchange;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.exchange.incoming.ImportDialog;
import quoin.exchange.incoming.ReadingTable;
import quoin.exchange.table.CsvTable;
import quoin.logbook.DiskTrouble;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Say;
import quoin.workbench.Waiting;
import quoin.workflow.spi.Stage;

/** File menu: readings of a table into the open day. */
@ActionID(category = "File", id = "quoin.exchange.ImportReadingsAction")
@ActionRegistration(displayName = "#CTL_ImportReadings", iconBase = "quoin/workbench/icons/file-earmark-arrow-down.svg")
@ActionReference(path = "Menu/File", position = 560)
@Messages({"CTL_ImportReadings=Import Readin&gs...", "import.file=Table with readings, saved as CSV", "import.csv=Tables (*.csv, *.txt)",
    "# {0} - file", "# {1} - what went wrong", "import.failed={0}: {1}",
    "# {0} - file", "import.reading=Reading {0}...",
    "# {0} - how many", "import.recording=Recording {0} readings. What is recorded when it is stopped stays; undo takes it back.",
    "import.tooLarge=the file is larger than a table of readings can be; choose another"})
public final class ImportReadingsAction implements ActionListener {

    private static final int RECORDED_AT_ONCE = 3;

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty()) {
            Say.message(Bundle.exchange_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        File file = new FileChooserBuilder(ImportReadingsAction.class).setTitle(Bundle.import_file())
                .setFileFilter(new FileNameExtensionFilter(Bundle.import_csv(), "csv", "txt")).showOpenDialog();
        if (file == null) {
            return;
        }
        try {
            if (file.length() > CsvTable.MOST_BYTES) {
                throw new IllegalArgumentException(Bundle.import_tooLarge());
            }
            Optional<ReadingTable> table = Waiting.until(Bundle.import_reading(file.getName()), watch -> read(file, day.get()));
            table.flatMap(t -> new ImportDialog(t, day.get().format()).ask()).ifPresent(settings -> record(current, settings, file.getName()));
        } catch (IllegalArgumentException e) {
            Say.message(Bundle.import_failed(file.getName(), e.getLocalizedMessage()), NotifyDescriptor.WARNING_MESSAGE);
        }
    }

    private static ReadingTable read(File file, DaySnapshot day) {
        try {
            return new ReadingTable(CsvTable.read(Files.readAllBytes(file.toPath())), day.car(), day.format());
        } catch (IOException e) {
            throw new IllegalArgumentException(DiskTrouble.of(e).toString(), e);
        }
    }

    /** A day's entries are made on the event thread, one after the other; between them it has time for everything else. */
    private static void record(CurrentDay current, List<Map<ReadingId, Double>> settings, String file) {
        if (settings.size() <= RECORDED_AT_ONCE) {
            settings.forEach(one -> record(current, one, file));
            return;
        }
        Waiting.until(Bundle.import_recording(settings.size()), watch -> {
            for (int i = 0; i < settings.size(); i++) {
                watch.orGiveUp((double) i / settings.size());
                Map<ReadingId, Double> one = settings.get(i);
                Waiting.onEventThread(() -> record(current, one, file));
            }
            return settings.size();
        });
    }

    /** Each figure is recorded in the stage it belongs to, those of a stage together. */
    private static void record(CurrentDay current, Map<ReadingId, Double> values, String file) {
        DaySnapshot day = current.snapshot().orElseThrow();
        Map<String, Map<ReadingId, Double>> byStage = new LinkedHashMap<>();
        values.forEach((id, value) -> byStage.computeIfAbsent(stage(day, id), s -> new TreeMap<>()).put(id, value));
        Measurement from = new Measurement("table", Map.of("file", file), file, Map.of());
        byStage.forEach((stage, some) -> current.record(stage,
                h -> new Entry.Reading(h, some, Map.of(), Entry.Source.RACER, Optional.of(from))));
    }

    private static String stage(DaySnapshot day, ReadingId id) {
        return day.stages().stream().filter(s -> s.readings(day.car()).contains(id)).map(Stage::id).findFirst().orElse("");
    }
}
