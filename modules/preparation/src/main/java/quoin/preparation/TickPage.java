package quoin.preparation;

import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.preparation.sheet.Page;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FigureTable;
import quoin.workbench.FindingsList;
import quoin.workbench.Looks;
import quoin.workbench.ReadingGrid;
import quoin.workbench.RequirementsList;

/** The conditions of the day to tick off, the load case every figure belongs to, and what is measured before the car is weighed. */
@Messages({
    "page.tick=Tick &off", "view.conditions=Tick off, in this order", "view.loadCase=Load case of the day", "view.findings=Checks",
    "view.pads=Pad heights, above the lowest", "view.zeros=Scales with nothing on them", "view.pressures=Tyre pressures",
    "view.driver=Driver", "view.driverMass=Driver and seat", "view.fuel=Fuel", "view.fuelNow=Fuel recorded today",
    "view.frontPressure=Front pressure, hot", "view.rearPressure=Rear pressure, hot", "view.unknown=not stated"})
final class TickPage implements Page {

    private static final String STAGE = PreparationWindow.STAGE;

    private final RequirementsList conditions;
    private final List<ReadingGrid> grids = new ArrayList<>();
    private final FigureTable loadCase = new FigureTable();
    private final FindingsList findings = new FindingsList();
    private final JPanel component;

    TickPage(CurrentDay current) {
        conditions = new RequirementsList(current, STAGE);
        JPanel measured = new JPanel(new GridLayout(1, 0));
        measured.add(Looks.section(Bundle.view_pressures(), grid(current, ReadingKind.PRESSURE)));
        measured.add(Looks.section(Bundle.view_pads(), grid(current, ReadingKind.PAD_HEIGHT)));
        measured.add(Looks.section(Bundle.view_zeros(), grid(current, ReadingKind.SCALE_ZERO)));
        JPanel right = Looks.column(Looks.section(Bundle.view_loadCase(), loadCase), Looks.section(Bundle.view_findings(), findings));
        conditions.onAllHold(() -> grids.get(0).toFirst());
        component = Looks.column(Looks.twoColumns(Looks.section(Bundle.view_conditions(), conditions), right), measured);
    }

    private ReadingGrid grid(CurrentDay current, ReadingKind kind) {
        ReadingGrid grid = ReadingGrid.compact(current, STAGE, car -> car.cornerReadings(kind));
        grids.add(grid);
        return grid;
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        grids.forEach(g -> g.show(day));
        day.stage(STAGE).ifPresent(s -> {
            conditions.show(s.requirements());
            findings.show(s.findings(), day.format());
        });
        loadCase.show(lines(day));
    }

    /** The load case as the car states it and as it was recorded today. */
    static List<FigureTable.Line> lines(DaySnapshot day) {
        Car car = day.car();
        LoadCase wanted = car.loadCase();
        QuantityFormat format = QuantityFormat.of(day.units().preferences());
        List<FigureTable.Line> lines = new ArrayList<>();
        lines.add(FigureTable.Line.plain(Bundle.view_driver(), wanted.driver().isBlank() ? Bundle.view_unknown() : wanted.driver()));
        double driver = car.masses().massOf(KnownMass.Role.DRIVER);
        if (driver > 0) {
            lines.add(FigureTable.Line.plain(Bundle.view_driverMass(), format.text(driver, Dimension.MASS)));
        }
        lines.add(FigureTable.Line.plain(Bundle.view_fuel(), wanted.fuelKg().isPresent()
                ? format.text(wanted.fuelKg().getAsDouble(), Dimension.MASS) : Bundle.view_unknown()));
        Optional<String> fuelNow = day.day().condition(Conditions.FUEL);
        fuelNow.ifPresent(f -> lines.add(FigureTable.Line.plain(Bundle.view_fuelNow(), f + " kg")));
        lines.add(FigureTable.Line.plain(Bundle.view_frontPressure(), pressure(day, Axle.FRONT)));
        lines.add(FigureTable.Line.plain(Bundle.view_rearPressure(), pressure(day, Axle.REAR)));
        return lines;
    }

    private static String pressure(DaySnapshot day, Axle axle) {
        var wanted = day.car().loadCase().pressureBar().get(axle);
        ReadingId any = ReadingId.of(ReadingKind.PRESSURE, axle.left());
        return wanted.isPresent() ? day.format().text(any, wanted.getAsDouble()) : Bundle.view_unknown();
    }

    @Override
    public String title() {
        return Bundle.page_tick();
    }

    @Override
    public void toFirst() {
        conditions.toFirst();
    }
}
