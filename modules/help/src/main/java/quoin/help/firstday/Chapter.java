package quoin.help.firstday;

import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.workflow.NextStep;

/**
 * A chapter of the first day. Which one is open follows from the next step of the day alone: whoever goes back, skips or undoes
 * something finds the chapter that belongs to what is due.
 */
@Messages({
    "chapter.prepare=Tick off the list",
    "chapter.prepareWhy=Every figure of the day belongs to one sound car in one state. On a real car you would go round it now; here one key ticks a line off.",
    "chapter.height=Now type four heights",
    "chapter.heightWhy=Heights come first: they decide where the suspension stands. Your rule is the practice car, which scatters a little, as a real one does.",
    "chapter.turn=Turn the rings of the plan",
    "chapter.turnWhy=The plan says which spring seat goes how many notches, and what that does to everything else. Recording the turns turns the practice car.",
    "chapter.weigh=Weigh the four corners",
    "# {0} - diagonal", "chapter.weighWhy=The cross weight {0} is what the corner weights are about: with it above half, the car turns more easily one way than the other.",
    "chapter.angles=Measure the wheel angles",
    "chapter.anglesWhy=Camber, caster and toe come after the weights, because every ring you turned has moved them.",
    "chapter.links=Set the links",
    "chapter.linksWhy=Rod ends and toe links go by flats. A camber change moves the toe, so the plan has both.",
    "chapter.again=Weigh again",
    "chapter.againWhy=The last look at everything: did setting the links move the weights? Then the bars go back on and the nuts are tightened.",
    "chapter.close=Close the day",
    "chapter.closeWhy=A closed day is one you can come back to next season. The sheet (Ctrl+P) has it all on one page."})
enum Chapter {
    PREPARE, HEIGHT, TURN, WEIGH, ANGLES, LINKS, AGAIN, CLOSE;

    static Chapter of(NextStep step) {
        if (step.kind() == NextStep.Kind.CLOSE || step.kind() == NextStep.Kind.DONE) {
            return CLOSE;
        }
        boolean turn = step.kind() == NextStep.Kind.TURN;
        return switch (step.stageId()) {
            case "ride-height" -> turn ? TURN : HEIGHT;
            case "corner-weights" -> turn ? TURN : WEIGH;
            case "wheel-angles" -> turn ? LINKS : ANGLES;
            case "final-recheck" -> AGAIN;
            default -> PREPARE;
        };
    }

    /** From one. */
    int number() {
        return ordinal() + 1;
    }

    String title() {
        return switch (this) {
            case PREPARE -> Bundle.chapter_prepare();
            case HEIGHT -> Bundle.chapter_height();
            case TURN -> Bundle.chapter_turn();
            case WEIGH -> Bundle.chapter_weigh();
            case ANGLES -> Bundle.chapter_angles();
            case LINKS -> Bundle.chapter_links();
            case AGAIN -> Bundle.chapter_again();
            case CLOSE -> Bundle.chapter_close();
        };
    }

    String why() {
        return switch (this) {
            case PREPARE -> Bundle.chapter_prepareWhy();
            case HEIGHT -> Bundle.chapter_heightWhy();
            case TURN -> Bundle.chapter_turnWhy();
            case WEIGH -> Bundle.chapter_weighWhy(Corner.crossWords());
            case ANGLES -> Bundle.chapter_anglesWhy();
            case LINKS -> Bundle.chapter_linksWhy();
            case AGAIN -> Bundle.chapter_againWhy();
            case CLOSE -> Bundle.chapter_closeWhy();
        };
    }
}
