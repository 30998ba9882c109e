package quoin.curves;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Locale;
import java.util.function.Supplier;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;

/** Asks for a file's name and writes it. */
@Messages({
    "# {0} - kind", "export.title=Save the curves as {0}",
    "# {0} - file", "export.replace={0} is there already. Replace it?",
    "# {0} - file", "# {1} - reason", "export.failed={0} was not written: {1}. Choose another folder and save again."})
final class Exports {

    private Exports() {
    }

    /**
     * Saves what is shown.
     *
     * @param kind    "svg", "png" or "csv"
     * @param content made when the name is chosen
     */
    static void save(String kind, Supplier<byte[]> content) {
        String shown = kind.toUpperCase(Locale.ROOT);
        File chosen = new FileChooserBuilder(Exports.class).setTitle(Bundle.export_title(shown)).setFilesOnly(true)
                .setFileFilter(new FileNameExtensionFilter(shown, kind)).setAcceptAllFileFilterUsed(false)
                .setDefaultWorkingDirectory(new File(System.getProperty("user.home"))).showSaveDialog();
        if (chosen == null) {
            return;
        }
        File file = chosen.getName().toLowerCase(Locale.ROOT).endsWith("." + kind) ? chosen
                : new File(chosen.getParentFile(), chosen.getName() + "." + kind);
        if (file.exists() && DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(
                Bundle.export_replace(file.getName()), NotifyDescriptor.YES_NO_OPTION)) != NotifyDescriptor.YES_OPTION) {
            return;
        }
        try {
            Files.write(file.toPath(), content.get());
        } catch (IOException e) {
            DialogDisplayer.getDefault().notify(new NotifyDescriptor.Message(Bundle.export_failed(file, e.getMessage()),
                    NotifyDescriptor.ERROR_MESSAGE));
        }
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
