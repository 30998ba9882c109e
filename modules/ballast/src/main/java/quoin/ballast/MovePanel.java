package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.openide.util.NbBundle.Messages;
import quoin.ballast.MoveChoices.Way;
import quoin.car.Car;
import quoin.car.KnownMass;
import quoin.car.MassZone;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.MassPlacement.Wish;
import quoin.mechanics.NoEquilibriumException;
import quoin.quantities.Dimension;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.InertText;
import quoin.workbench.LongWork;
import quoin.workbench.LongWorkBar;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;

/** Moving mass: what it does, the least of it for wanted shares, and the lists of what may be moved and where to. */
@Messages({
    "move.wish=Wanted shares", "move.own=Or a move of my own", "move.searching=Trying every choice", "move.nothing=Nothing is moved yet.",
    "move.stopped=The search was stopped. Change a figure above to search again, or list fewer masses or places.",
    "move.ways=Ways there: choose one to see its readings", "move.result=Readings then, springs and perches untouched",
    "move.front=Front share", "move.left=Left share", "move.tolerance=Within", "move.piece=Ballast in pieces of",
    "move.blankRemark=blank = any", "move.pieceRemark=blank = any mass",
    "move.rule=Front share and left share change only by moving or changing mass: no perch, pushrod or pad does it. Do it before the cross weight.",
    "move.caution=Ballast is bolted through with large washers as the rule book of your series says, never wedged, taped or loose; "
            + "loose lead in a crash kills. Battery: isolate it first, cover its poles.",
    "move.weighFirst=Weigh all four corners first: every answer starts from the readings.",
    "move.noWish=Type the front share or the left share you want.",
    "move.noZones=State where ballast may be fixed, below, and keep it on the car: ways are searched among those places.",
    "# {0} - mass", "# {1} - share", "# {2} - rise", "move.cost=Cost: {0} ({1} of the car), centre of gravity {2}.",
    "# {0} - mass", "# {1} - rise", "move.gain=Gain: {0} lighter, centre of gravity {1}.",
    "# {0} - rise", "move.costFree=Cost: no mass, centre of gravity {0}.",
    "# {0} - miss", "move.near=The nearest that is possible: {0} short of the wish.",
    "move.done=Re&cord as done", "move.items=Masses that may be moved", "move.zones=Places where ballast may be fixed",
    "move.mass=mass", "move.x=x ahead of front axle", "move.y=y left", "move.z=z high",
    "move.rear=rear x", "move.frontX=front x", "move.right=right y", "move.leftY=left y",
    "move.keep=&Keep both lists on the car",
    "# {0} - reason", "move.refused={0}"})
final class MovePanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final double USUAL_TOLERANCE_PERCENT = 0.1;

    private final transient CurrentDay current;
    private final Form form = new Form(() -> {
        showsOwn = false;
        update();
    });
    private final transient Form.Figure front = form.add(Bundle.move_front(), Dimension.PERCENT, Bundle.move_blankRemark());
    private final transient Form.Figure left = form.add(Bundle.move_left(), Dimension.PERCENT, Bundle.move_blankRemark());
    private final transient Form.Figure tolerance = form.add(Bundle.move_tolerance(), Dimension.PERCENT, "");
    private final transient Form.Figure piece = form.add(Bundle.move_piece(), Dimension.MASS, Bundle.move_pieceRemark());
    private final JPanel ways = new JPanel(new BorderLayout());
    private final WrapText what = new WrapText("", 1, Font.BOLD);
    private final WrapText cost = new WrapText("");
    private final ChangeTable table = new ChangeTable();
    private final javax.swing.JButton done = Looks.button(Bundle.move_done(), this::recordDone);
    private final RowsForm items = new RowsForm(List.of(new RowsForm.Column(Bundle.move_mass(), Dimension.MASS),
            new RowsForm.Column(Bundle.move_x(), Dimension.LENGTH), new RowsForm.Column(Bundle.move_y(), Dimension.LENGTH),
            new RowsForm.Column(Bundle.move_z(), Dimension.LENGTH)));
    private final RowsForm zones = new RowsForm(List.of(new RowsForm.Column(Bundle.move_rear(), Dimension.LENGTH),
            new RowsForm.Column(Bundle.move_frontX(), Dimension.LENGTH), new RowsForm.Column(Bundle.move_right(), Dimension.LENGTH),
            new RowsForm.Column(Bundle.move_leftY(), Dimension.LENGTH), new RowsForm.Column(Bundle.move_z(), Dimension.LENGTH)));
    private final OwnMove own;
    private final transient LongWork<List<Way>> search = new LongWork<>("quoin mass moves", found -> update(), this::progress);
    private final LongWorkBar searching = new LongWorkBar(Bundle.move_searching(), search::stop);
    private transient Optional<Way> chosen = Optional.empty();
    private int chosenIndex;
    /** The last thing touched is what is shown: the ways, or the move of the racer's own. */
    private boolean showsOwn;

    /** What the ways are an answer to. */
    private record Question(long revision, Wish wish, double pieceKg) {
    }

    MovePanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
        own = new OwnMove(current, () -> {
            showsOwn = true;
            update();
        });
        JPanel rule = Looks.column(new WrapText(Bundle.move_rule(), 1, Font.BOLD), new WrapText(Bundle.move_caution()));
        rule.setBorder(Looks.padding(0.4, 0.9));
        JPanel result = new JPanel(new BorderLayout(0, Looks.em(0.4)));
        JPanel button = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.LEADING, 0, 0));
        button.add(done);
        result.add(Looks.column(what, cost, button), BorderLayout.NORTH);
        result.add(table, BorderLayout.CENTER);
        JPanel keep = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.LEADING, Looks.em(0.9), 0));
        keep.add(Looks.button(Bundle.move_keep(), this::keep));
        JPanel leftSide = Looks.column(Looks.section(Bundle.move_wish(), form), Looks.section(Bundle.move_ways(), Looks.column(searching, ways)),
                Looks.section(Bundle.move_own(), own));
        add(WidthOfTheWindow.scrolledFromTheTop(Looks.column(rule, Looks.twoColumns(leftSide, Looks.section(Bundle.move_result(), result), 0.44),
                Looks.section(Bundle.move_items(), items), Looks.section(Bundle.move_zones(), zones), keep)), BorderLayout.CENTER);
    }

    void toFirst() {
        form.toFirst();
    }

    void update() {
        current.snapshot().ifPresent(this::show);
    }

    private void show(DaySnapshot day) {
        form.begin(day.units());
        own.show(day);
        items.show(MoveChoices.movable(day.car()).stream().map(m -> new RowsForm.Line(m.name(), List.of(m.massKg(), m.xMm(), m.yMm(), m.zMm())))
                .toList(), day.units());
        zones.show(day.car().masses().zones().stream().map(z -> new RowsForm.Line(z.name(), List.of(z.rearXMm(), z.frontXMm(), z.rightYMm(),
                z.leftYMm(), z.zMm()))).toList(), day.units());
        OptionalDouble wantedFront = front.value(day.units());
        OptionalDouble wantedLeft = left.value(day.units());
        double within = Math.max(0, tolerance.valueOr(USUAL_TOLERANCE_PERCENT, day.units()));
        double pieceKg = Math.max(0, piece.valueOr(0, day.units()));
        Optional<Standing> standing = Standing.of(day);
        String missing = standing.isEmpty() ? Bundle.move_weighFirst()
                : wantedFront.isEmpty() && wantedLeft.isEmpty() ? Bundle.move_noWish()
                : day.car().masses().zones().isEmpty() ? Bundle.move_noZones() : "";
        if (!missing.isEmpty() || form.hasProblems()) {
            ways.removeAll();
            ways.add(new WrapText(missing), BorderLayout.NORTH);
            search.forget();
            searching.show(search);
            ways.revalidate();
            standing.ifPresentOrElse(s -> result(day, s, ownWay(day), Optional.empty()), this::nothing);
            return;
        }
        Wish wish = new Wish(wantedFront, wantedLeft, within);
        Standing from = standing.get();
        Optional<List<Way>> all = search.ask(new Question(day.day().revision(), wish, pieceKg),
                watch -> MoveChoices.ways(day, from, wish, pieceKg, watch));
        searching.show(search);
        if (all.isPresent()) {
            showWays(day, from, wish, all.get());
        } else {
            ways.removeAll();
            ways.add(new WrapText(search.isBusy() ? "" : Bundle.move_stopped()), BorderLayout.NORTH);
            ways.revalidate();
            result(day, from, ownWay(day), Optional.empty());
        }
    }

    private void progress(double share) {
        searching.progress(share);
    }

    private Optional<Way> ownWay(DaySnapshot day) {
        Optional<Way> typed = own.way(day);
        return showsOwn ? typed : Optional.empty();
    }

    private void nothing() {
        chosen = Optional.empty();
        done.setEnabled(false);
        what.setText(Bundle.move_weighFirst());
        cost.setText("");
        table.setVisible(false);
    }

    private void showWays(DaySnapshot day, Standing standing, Wish wish, List<Way> all) {
        ways.removeAll();
        List<JRadioButton> buttons = new ArrayList<>();
        ButtonGroup group = new ButtonGroup();
        List<java.awt.Component> lines = new ArrayList<>();
        chosenIndex = Math.min(chosenIndex, all.size() - 1);
        for (int i = 0; i < all.size(); i++) {
            Way way = all.get(i);
            int index = i;
            JRadioButton button = new JRadioButton(InertText.wrapping(way.words()), i == chosenIndex && !showsOwn);
            InertText.laidOut(button);
            button.getAccessibleContext().setAccessibleName(way.words());
            button.setEnabled(way.possible());
            button.addActionListener(e -> {
                chosenIndex = index;
                showsOwn = false;
                result(day, standing, Optional.of(way), Optional.of(wish));
            });
            group.add(button);
            buttons.add(button);
            lines.add(button);
        }
        ways.add(Looks.column(lines.toArray(java.awt.Component[]::new)), BorderLayout.NORTH);
        ways.revalidate();
        ways.repaint();
        Optional<Way> typed = ownWay(day);
        result(day, standing, showsOwn ? typed : Optional.of(all.get(chosenIndex)), Optional.of(wish));
    }

    private void result(DaySnapshot day, Standing standing, Optional<Way> way, Optional<Wish> wish) {
        chosen = way.filter(w -> !w.masses().isEmpty());
        done.setEnabled(chosen.isPresent());
        table.setVisible(true);
        try {
            var masses = way.map(Way::masses).orElse(List.of());
            Equilibrium then = standing.after(masses);
            table.show(day, Standing.readings(standing.car(), standing.now()), Standing.readings(standing.car(), then));
            what.setText(way.map(Way::words).orElse(Bundle.move_nothing()));
            cost.setText(way.isEmpty() ? "" : costWords(day, standing, way.get(), then, wish));
        } catch (NoEquilibriumException e) {
            cost.setText(e.getLocalizedMessage());
        }
    }

    private static String costWords(DaySnapshot day, Standing standing, Way way, Equilibrium then, Optional<Wish> wish) {
        ReadingFormat format = day.format();
        String rise = format.change(ReadingId.ofCar(ReadingKind.CG_HEIGHT), standing.cgRiseMm(way.masses()));
        double kg = way.addedKg();
        String words = kg > 1e-6 ? Bundle.move_cost(MoveChoices.mass(day, kg),
                format.text(ReadingId.ofCar(ReadingKind.CROSS), 100 * kg / standing.model().totalMassKg()), rise) : kg < -1e-6 ? Bundle.move_gain(MoveChoices.mass(day, -kg), rise)
                : Bundle.move_costFree(rise);
        double miss = wish.map(w -> w.missPercent(then.shares().frontPercent(), then.shares().leftPercent())).orElse(0.0);
        return miss < 0.005 ? words : words + " " + Bundle.move_near(format.text(ReadingId.ofCar(ReadingKind.CROSS), miss));
    }

    private void recordDone() {
        Optional<Way> way = chosen;
        if (way.isPresent() && current.record("", h -> new Entry.Condition(h, Conditions.BALLAST, way.get().words(), ""))) {
            List<MassZone> places = current.snapshot().orElseThrow().car().masses().zones();
            current.keepOnCar(car -> car.withMasses(car.masses().with(way.get().kept(), places)));
        }
    }

    private void keep() {
        current.snapshot().ifPresent(day -> {
            Optional<List<RowsForm.Line>> masses = items.lines(day.units());
            Optional<List<RowsForm.Line>> places = zones.lines(day.units());
            if (masses.isPresent() && places.isPresent()) {
                keep(masses.get(), places.get());
            }
        });
    }

    private void keep(List<RowsForm.Line> masses, List<RowsForm.Line> places) {
        try {
            List<MassZone> boxes = places.stream().map(l -> new MassZone(l.name(), l.figures().get(0), l.figures().get(1), l.figures().get(2),
                    l.figures().get(3), l.figures().get(4))).toList();
            current.keepOnCar(car -> car.withMasses(car.masses().with(merged(car, masses), boxes)));
        } catch (IllegalArgumentException e) {
            zones.problem(Bundle.move_refused(e.getLocalizedMessage()));
        }
    }

    /** Driver and fuel as they are, then the list; a mass that was there keeps its role, a new one is ballast. */
    private static List<KnownMass> merged(Car car, List<RowsForm.Line> lines) {
        List<KnownMass> all = new ArrayList<>(car.masses().known());
        List<KnownMass> movable = MoveChoices.movable(car);
        all.removeAll(movable);
        for (RowsForm.Line line : lines) {
            KnownMass.Role role = movable.stream().filter(m -> m.name().equals(line.name())).map(KnownMass::role).findFirst()
                    .orElse(KnownMass.Role.BALLAST);
            List<Double> f = line.figures();
            all.add(new KnownMass(line.name(), role, f.get(0), f.get(1), f.get(2), f.get(3)));
        }
        return all;
    }
}
