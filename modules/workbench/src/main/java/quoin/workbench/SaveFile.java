package quoin.workbench;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileFilter;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jfree.chart.JFreeChart;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;
import quoin.logbook.DiskTrouble;
import quoin.logbook.JournalException;

/** Asks where something goes and in which form, and writes it; a file that is there is written over only when that is wanted. */
@Messages({
    "# {0} - file", "saveFile.exists={0} is there already. Replace it?",
    "# {0} - file", "# {1} - reason", "saveFile.failed={0} was not written: {1}. Choose another folder and save again.",
    "# {0} - file", "saveFile.making=Making {0}...",
    "saveFile.svg=Drawing for print and editing (*.svg)", "saveFile.png=Picture (*.png)"})
public final class SaveFile {

    private SaveFile() {
    }

    /**
     * One form that can be chosen.
     *
     * @param words     as the racer chooses it
     * @param extension end of the file's name, without the dot
     * @param contents  made when it is chosen, on another thread; may fail with a message for the racer
     */
    public record Form(String words, String extension, Supplier<byte[]> contents) {
    }

    /** A chart as a drawing or a picture. */
    public static List<Form> chart(Supplier<JFreeChart> chart) {
        return List.of(new Form(Bundle.saveFile_svg(), "svg", () -> ChartFiles.svg(chart.get())),
                new Form(Bundle.saveFile_png(), "png", () -> ChartFiles.png(chart.get())));
    }

    /**
     * Asks and writes.
     *
     * @param asking remembers its folder
     * @param forms  the first is offered first
     * @return the file written; empty where it was cancelled or failed, which was then said
     */
    public static Optional<File> ask(Class<?> asking, String title, List<Form> forms) {
        JFileChooser chooser = new FileChooserBuilder(asking).setTitle(title).setFilesOnly(true)
                .setDefaultWorkingDirectory(new File(System.getProperty("user.home"))).createFileChooser();
        chooser.setAcceptAllFileFilterUsed(false);
        List<FileFilter> filters = forms.stream().<FileFilter>map(f -> new FileNameExtensionFilter(f.words(), f.extension())).toList();
        filters.forEach(chooser::addChoosableFileFilter);
        chooser.setFileFilter(filters.get(0));
        if (chooser.showSaveDialog(WindowManager.getDefault().getMainWindow()) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Form chosen = form(chooser.getSelectedFile().getName(), forms, Math.max(0, filters.indexOf(chooser.getFileFilter())));
        File file = named(chooser.getSelectedFile(), chosen.extension());
        if (file.exists() && DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(InertText.plain(Bundle.saveFile_exists(file.getName())),
                NotifyDescriptor.YES_NO_OPTION)) != NotifyDescriptor.YES_OPTION) {
            return Optional.empty();
        }
        try {
            Optional<byte[]> contents = Waiting.until(Bundle.saveFile_making(file.getName()), watch -> chosen.contents().get());
            if (contents.isEmpty()) {
                return Optional.empty();
            }
            Files.write(file.toPath(), contents.get());
            return Optional.of(file);
        } catch (IOException | UncheckedIOException | JournalException e) {
            Say.message(Bundle.saveFile_failed(file, DiskTrouble.of(e)), NotifyDescriptor.ERROR_MESSAGE);
            return Optional.empty();
        }
    }

    /** What is typed as the end of the name comes before the form chosen in the list. */
    static Form form(String name, List<Form> forms, int chosen) {
        String end = name.toLowerCase(Locale.ROOT);
        Form listed = forms.get(chosen);
        return end.endsWith("." + listed.extension()) ? listed
                : forms.stream().filter(f -> end.endsWith("." + f.extension())).findFirst().orElse(listed);
    }

    static File named(File typed, String extension) {
        return typed.getName().toLowerCase(Locale.ROOT).endsWith("." + extension) ? typed
                : new File(typed.getParentFile(), typed.getName() + "." + extension);
    }
}
