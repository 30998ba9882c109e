package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The order of work written a second time, by replaying what was done with flags instead of entries and a table. Knows three
 * groups of readings, each read as a whole, and a car that starts prepared: driver in, bars off, pads levelled, settled.
 */
final class RandomWalkModel {

    enum Group { HEIGHTS, LOADS, ANGLES }

    enum What { PERCH, CAMBER, TOE, DRIVER_IN, DRIVER_OUT, PADS_LEVELLED, PADS_MOVED, BAR_OFF, BAR_ON, JACK, SETTLE, READ_GOOD, READ_BAD,
        SIGN, WAIVE, REOPEN }

    /** One thing done: leg movement for a perch, group for a reading, stage for a sign-off. */
    record Op(What what, int corner, double legMm, Group group, String stage) {
    }

    /** What happened to the last reading of a group that was in order. */
    private static final class Standing {
        private boolean read;
        private boolean inside;
        private boolean byPerch;
        private boolean byCamber;
        private boolean otherwise;
        private boolean driverMoved;
        private boolean doubtful;
        private int readAt;
        private final double[] legMm = new double[4];
    }

    private static final List<String> ORDER = List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck");

    private final Map<Group, Standing> groups = new EnumMap<>(Group.class);
    private final Map<Group, Integer> lastDisturbed = new EnumMap<>(Group.class);
    private final Map<String, Integer> signed = new HashMap<>();
    private final Map<String, Boolean> waived = new HashMap<>();
    private final Map<Group, Integer> recorded = new EnumMap<>(Group.class);
    private boolean driverIn = true;
    private boolean padsLevelled = true;
    private boolean barOff = true;
    private boolean settled = true;

    /** Replays what counts; a withdrawn op is null. */
    RandomWalkModel(List<Op> ops) {
        for (Group group : Group.values()) {
            groups.put(group, new Standing());
            lastDisturbed.put(group, -1);
            recorded.put(group, 0);
        }
        for (int i = 0; i < ops.size(); i++) {
            if (ops.get(i) != null) {
                take(ops.get(i), i);
            }
        }
    }

    private void take(Op op, int at) {
        switch (op.what()) {
            case PERCH -> {
                settled = false;
                stale(at, Group.HEIGHTS, Group.LOADS);
                groups.get(Group.HEIGHTS).byPerch = true;
                groups.get(Group.LOADS).byPerch = true;
                groups.get(Group.ANGLES).legMm[op.corner()] += op.legMm();
                groups.get(Group.ANGLES).byPerch = true;
            }
            case CAMBER -> {
                settled = false;
                stale(at, Group.values());
                groups.values().forEach(g -> g.byCamber = true);
            }
            case TOE -> {
                settled = false;
                stale(at, Group.ANGLES);
                groups.get(Group.ANGLES).byCamber = true;
                groups.get(Group.LOADS).doubtful = true;
            }
            case DRIVER_IN, DRIVER_OUT -> driver(op.what() == What.DRIVER_IN, at);
            case PADS_LEVELLED, PADS_MOVED -> pads(op.what() == What.PADS_LEVELLED, at);
            case BAR_OFF, BAR_ON -> {
                if (barOff != (op.what() == What.BAR_OFF)) {
                    barOff = !barOff;
                    groups.get(Group.LOADS).doubtful = true;
                }
            }
            case JACK -> {
                settled = false;
                groups.values().forEach(g -> g.doubtful = true);
            }
            case SETTLE -> settled = true;
            case READ_GOOD, READ_BAD -> read(op.group(), op.what() == What.READ_GOOD, at);
            case SIGN, WAIVE -> {
                signed.put(op.stage(), at);
                waived.put(op.stage(), op.what() == What.WAIVE);
            }
            case REOPEN -> signed.remove(op.stage());
            default -> throw new AssertionError(op);
        }
    }

    private void stale(int at, Group... some) {
        for (Group group : some) {
            lastDisturbed.put(group, at);
        }
    }

    private void driver(boolean in, int at) {
        if (in != driverIn) {
            driverIn = in;
            stale(at, Group.HEIGHTS, Group.LOADS);
            groups.values().forEach(g -> g.driverMoved = true);
        }
    }

    private void pads(boolean levelled, int at) {
        if (levelled != padsLevelled) {
            padsLevelled = levelled;
            settled = false;
            stale(at, Group.values());
            groups.values().forEach(g -> g.otherwise = true);
        }
    }

    private void read(Group group, boolean inside, int at) {
        recorded.merge(group, 1, Integer::sum);
        boolean inTurn = ORDER.subList(0, group.ordinal() + 1).stream().allMatch(signed::containsKey);
        if (inTurn && driverIn && padsLevelled && barOff && settled) {
            Standing fresh = new Standing();
            fresh.read = true;
            fresh.inside = inside;
            fresh.readAt = at;
            groups.put(group, fresh);
        }
    }

    int recorded(Group group) {
        return recorded.get(group);
    }

    boolean isSigned(String stage) {
        return signed.containsKey(stage);
    }

    private boolean legBeyond(Standing g) {
        double most = 0;
        for (double leg : g.legMm) {
            most = Math.max(most, Math.abs(leg));
        }
        return most > 2;
    }

    private boolean stale(Group group) {
        Standing g = groups.get(group);
        if (group == Group.ANGLES) {
            return g.byCamber || g.otherwise || legBeyond(g);
        }
        return g.byPerch || g.byCamber || g.otherwise || g.driverMoved && !driverIn;
    }

    private boolean fresh(Group group, boolean smallTrim) {
        Standing g = groups.get(group);
        boolean trimmed = group == Group.ANGLES && g.byPerch && !smallTrim;
        return g.read && !stale(group) && !g.doubtful && !g.driverMoved && !trimmed;
    }

    private List<Group> judged(String stage) {
        return switch (stage) {
            case "preparation" -> List.of();
            case "ride-height" -> List.of(Group.HEIGHTS);
            case "corner-weights" -> List.of(Group.LOADS);
            case "wheel-angles" -> List.of(Group.ANGLES);
            default -> List.of(Group.values());
        };
    }

    /** What is signed still holds. */
    boolean holds(String stage) {
        return notHolding(stage).isEmpty() && (!stage.equals("preparation") || padsLevelled || waived.get(stage));
    }

    private List<Group> notHolding(String stage) {
        List<Group> gone = new ArrayList<>();
        for (Group group : judged(stage)) {
            boolean excused = waived.get(stage) && lastDisturbed.get(group) < signed.get(stage);
            Standing g = groups.get(group);
            boolean looked = waived.get(stage) || lookedAgain(stage, group);
            if (!excused && !(g.read && g.inside && !stale(group) && looked)) {
                gone.add(group);
            }
        }
        return gone;
    }

    /** Weights and heights of the final re-check are taken after every other sign-off. */
    private boolean lookedAgain(String stage, Group group) {
        return !stage.equals("final-recheck") || group == Group.ANGLES || ORDER.subList(0, 4).stream()
                .allMatch(s -> !signed.containsKey(s) || signed.get(s) < groups.get(group).readAt);
    }

    boolean maySign(String stage) {
        for (String earlier : ORDER.subList(0, ORDER.indexOf(stage))) {
            if (!signed.containsKey(earlier) || !holds(earlier) && !leftForLater(earlier, stage)) {
                return false;
            }
        }
        if (stage.equals("preparation")) {
            return padsLevelled && driverIn && barOff;
        }
        return judged(stage).stream().allMatch(g -> fresh(g, stage.equals("final-recheck")) && groups.get(g).inside
                && lookedAgain(stage, g));
    }

    /** Camber work makes heights and weights wait for the re-check; a last trim makes angles wait for their last look. */
    private boolean leftForLater(String earlier, String stage) {
        if (earlier.equals("preparation")) {
            return false;
        }
        return notHolding(earlier).stream().allMatch(group -> {
            Standing g = groups.get(group);
            boolean otherwise = g.otherwise || group != Group.ANGLES && g.driverMoved && !driverIn;
            if (!g.read || otherwise) {
                return false;
            }
            if (stage.equals("wheel-angles")) {
                return g.byCamber && !g.byPerch;
            }
            return stage.equals("final-recheck") && group == Group.ANGLES && !g.byCamber && legBeyond(g);
        });
    }
}
