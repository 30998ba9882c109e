package quoin.garage.form;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JList;
import org.openide.util.NbBundle.Messages;
import quoin.garage.draft.DraftResult;
import quoin.garage.draft.Field;
import quoin.garage.draft.Remark;
import quoin.garage.draft.Section;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;

/**
 * A page in the list at the left.
 *
 * @param key   key of the section; empty for the list of assumed values
 * @param title as shown, with what is wrong on it
 */
@Messages({
    "# {0} - page", "# {1} - number", "line.problems={0}  \u2715 {1}",
    "# {0} - page", "# {1} - number", "line.warnings={0}  ? {1}",
    "# {0} - number", "line.assumed=Assumed values ({0})",
    "line.notYet=Assumed values"})
record PageLine(String key, String title) {

    static List<PageLine> of(List<Section> sections, DraftResult result) {
        List<PageLine> lines = new ArrayList<>();
        for (Section section : sections) {
            List<String> paths = section.fields().map(Field::path).toList();
            long problems = count(result.problems(), paths);
            long warnings = count(result.warnings(), paths);
            lines.add(new PageLine(section.key(), problems > 0 ? Bundle.line_problems(section.title(), problems)
                    : warnings > 0 ? Bundle.line_warnings(section.title(), warnings) : section.title()));
        }
        lines.add(new PageLine("", result.car().isPresent() ? Bundle.line_assumed(result.assumed().size()) : Bundle.line_notYet()));
        return lines;
    }

    private static long count(List<Remark> remarks, List<String> paths) {
        return remarks.stream().filter(r -> paths.contains(r.path())).count();
    }

    /** Shows the title with room around it. */
    static final class Renderer extends PlainListRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, ((PageLine) value).title(), index, selected, focused);
            setBorder(Looks.padding(0.35, 0.6));
            return this;
        }
    }
}
