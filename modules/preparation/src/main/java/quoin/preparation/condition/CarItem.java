package quoin.preparation.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Day;
import quoin.workflow.CarCheck;

/**
 * One item of the check of the car.
 *
 * @param key    of its condition
 * @param name   what is looked at
 * @param how    how, and what is good enough; empty for an item of the racer's own
 * @param state  as last recorded today; empty = not looked at yet
 */
@Messages({
    "item.hub-play=Hub play", "item.hub-play.how=Rock each wheel at 12 and 6 and at 3 and 9 o'clock. No play felt; where it is, a dial gauge: end float 0.05 mm at most (common practice).",
    "item.joints=Rod ends and ball joints", "item.joints.how=A hand on each joint while another rocks the wheel. Free to turn, no play, no rust at the ball.",
    "item.rack=Steering rack and column", "item.rack.how=Wheel held, rack pushed and pulled at each tie rod. No play, no lost turn at the steering wheel.",
    "item.run-out=Wheel run-out", "item.run-out.how=Turn each wheel past a dial or a fixed pointer at the rim. 0.5 mm at most (common practice); tyres seated evenly.",
    "item.brackets=Brackets and witness paint", "item.brackets.how=Cracks at welds and pick-ups, paint across nuts broken, bolts that have moved.",
    "item.straight=Wishbones and push rods straight", "item.straight.how=A rule along each. A bent part set out with the adjusters is right only standing still: replace it.",
    "item.lengths=Links left against right", "item.lengths.how=Length between joints, left and right alike unless the car says otherwise.",
    "item.dampers=Damper shafts and spring seats", "item.dampers.how=Shafts straight and dry, springs seated at full droop, rings free to turn.",
    "item.springs=Spring pairs", "item.springs.how=Free length, and the rate measured below: springs are often not what they were sold as.",
    "item.engagement=Rod end engagement", "item.engagement.how=Witness hole: threads are seen in it and a wire of 0.5 mm does not pass (TM 1-1500-204-23-1). Without a hole, 1.5 diameters of thread engaged (common practice), two full threads beyond a lock nut."})
record CarItem(String key, String name, String how, Optional<CarCheck.Item> state) {

    private static final List<String> IDS = List.of("hub-play", "joints", "rack", "run-out", "brackets", "straight", "lengths", "dampers",
            "springs", "engagement");

    boolean isGood() {
        return state.filter(s -> s.value().equals(CarCheck.GOOD)).isPresent();
    }

    boolean isOpen() {
        return state.filter(s -> s.value().equals(CarCheck.OPEN)).isPresent();
    }

    boolean isOwn() {
        return CarCheck.ownName(key).isPresent();
    }

    /** True once it was found good or left open with a reason. */
    boolean isSeenTo() {
        return isGood() || isOpen() && !state.orElseThrow().reason().isBlank();
    }

    /** The list as it stands today: the program's items in working order, then the racer's own. */
    static List<CarItem> of(Day day) {
        List<CarCheck.Item> recorded = CarCheck.recorded(day);
        List<CarItem> items = new ArrayList<>();
        for (String id : IDS) {
            String key = CarCheck.key(id);
            items.add(new CarItem(key, text("item." + id), text("item." + id + ".how"),
                    recorded.stream().filter(r -> r.key().equals(key)).findFirst()));
        }
        recorded.stream().filter(r -> CarCheck.ownName(r.key()).isPresent())
                .forEach(r -> items.add(new CarItem(r.key(), r.name(), "", Optional.of(r))));
        return items;
    }

    private static String text(String key) {
        return NbBundle.getMessage(CarItem.class, key);
    }
}
