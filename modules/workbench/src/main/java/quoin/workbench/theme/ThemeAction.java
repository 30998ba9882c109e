package quoin.workbench.theme;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.prefs.Preferences;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.LifecycleManager;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import org.openide.util.NbPreferences;

/** Chooses light or dark. It is there when Quoin starts anew, which can be at once: the open day comes back where it stood. */
@ActionID(category = "Tools", id = "quoin.workbench.theme.ThemeAction")
@ActionRegistration(displayName = "#CTL_Theme", iconBase = "quoin/workbench/icons/circle-half.svg")
@ActionReference(path = "Menu/Tools", position = 110)
@Messages({
    "CTL_Theme=&Light or Dark...", "TITLE_Theme=Light or dark",
    "theme.restart=Quoin shows it when it starts anew. Start anew now? The open day comes back where it stood."})
public final class ThemeAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        Preferences node = NbPreferences.root().node(Theme.LAF);
        ThemeForm form = new ThemeForm(Theme.chosen(node));
        Object answer = DialogDisplayer.getDefault().notify(new DialogDescriptor(form, Bundle.TITLE_Theme()));
        if (answer != DialogDescriptor.OK_OPTION) {
            return;
        }
        String before = node.get(Theme.LAF, Theme.LIGHT_LAF);
        form.chosen().keep(node, form.chosen() == Theme.SYSTEM && SystemTheme.isDark());
        if (!node.get(Theme.LAF, Theme.LIGHT_LAF).equals(before) && startAnew()) {
            LifecycleManager.getDefault().markForRestart();
            LifecycleManager.getDefault().exit();
        }
    }

    private static boolean startAnew() {
        return DialogDisplayer.getDefault().notify(new NotifyDescriptor.Confirmation(Bundle.theme_restart(), Bundle.TITLE_Theme(),
                NotifyDescriptor.YES_NO_OPTION, NotifyDescriptor.QUESTION_MESSAGE)) == NotifyDescriptor.YES_OPTION;
    }
}
