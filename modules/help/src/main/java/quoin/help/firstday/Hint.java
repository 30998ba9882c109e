package quoin.help.firstday;

import org.openide.util.NbBundle.Messages;
import quoin.workflow.NextStep;

/** Which keys do the step that is due. */
@Messages({
    "hint.condition=Alt+N does it and goes on to the next line. A line that asks for a figure wants it typed, then Enter.",
    "hint.settle=Alt+N says that the car has been bounced and rolled, so that it stands as it will stand.",
    "hint.read=Alt+N goes to the fields. Alt+P reads the practice car, or type figures of your own, Enter after each. Ctrl+Enter records them.",
    "hint.turn=Alt+N goes to the turns. Shift+Enter says one corner is done, Ctrl+Enter all of them. Then the car wants settling and reading again.",
    "hint.sign=All is inside: Alt+N signs the stage off and opens the next.",
    "hint.close=Alt+N closes the day.",
    "hint.done=That was a whole day. Ctrl+P shows its sheet; Ctrl+Shift+N begins with your own car. Shift+F1 ends the guide."})
final class Hint {

    private Hint() {
    }

    static String of(NextStep.Kind kind) {
        return switch (kind) {
            case CONDITION -> Bundle.hint_condition();
            case SETTLE -> Bundle.hint_settle();
            case READ -> Bundle.hint_read();
            case TURN -> Bundle.hint_turn();
            case SIGN_OFF -> Bundle.hint_sign();
            case CLOSE -> Bundle.hint_close();
            case DONE -> Bundle.hint_done();
        };
    }
}
