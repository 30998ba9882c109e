package quoin.garage.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.PerAxle;
import quoin.car.AxleSetup;
import quoin.car.SuspensionChoice;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.CornerKinematics;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.spi.SuspensionTypes;

class SuspensionDraftTest {

    private static final FigureText METRIC = new FigureText(UnitPreferences.metric(), true);
    private static final SuspensionTypes TYPES = new SuspensionTypes(List.of(new TrailingArm()));

    /** A type with one parameter of each sort. */
    private static final class TrailingArm implements SuspensionType {

        @Override
        public String id() {
            return "trailing-arm";
        }

        @Override
        public String name() {
            return "Trailing arm";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.length("arm", "Arm length", "Pivot to hub."),
                    Parameter.choice("bush", "Bush", "What it turns on.", List.of("rubber", "bearing")).optional(),
                    Parameter.point("pivot", "Pivot", "Middle of the pivot.").optional());
        }

        @Override
        public CornerKinematics corner(ParameterValues values, Side side) {
            throw new IllegalStateException("the form needs no kinematics");
        }
    }

    private static CarDraft rear(String type, Map<String, String> parameters) {
        Car car = Ouzel23.car();
        AxleSetup rear = car.axles().rear();
        Car changed = new Car(car.id(), car.name(), car.wheelbaseMm(), new PerAxle<>(car.axles().front(),
                new AxleSetup(rear.trackMm(), rear.bar(), new SuspensionChoice(type, parameters))), car.corners(), car.masses(),
                car.heightPoints(), car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
        return CarDraft.from(changed, METRIC, TYPES);
    }

    private static SuspensionChoice rear(CarDraft draft) {
        DraftResult result = draft.read();
        assertEquals(List.of(), result.problems());
        return result.car().orElseThrow().axles().get(Axle.REAR).suspension();
    }

    private static List<String> rearWarnings(CarDraft draft) {
        return draft.read().warnings().stream().map(Remark::path).filter(path -> path.startsWith("suspension.rear.")).toList();
    }

    private static Field field(CarDraft draft, String path) {
        return draft.sections().stream().flatMap(Section::fields).filter(f -> f.path().equals(path)).findFirst().orElseThrow();
    }

    @Test
    void theTypeSaysWhatIsAsked() {
        CarDraft draft = rear("trailing-arm", Map.of());
        Field arm = field(draft, "suspension.rear.parameters.arm");
        assertEquals("Rear arm length", arm.label());
        assertEquals("mm", arm.unit());
        assertTrue(field(draft, "suspension.rear.parameters.bush").kind() instanceof FieldKind.Choice);
        assertEquals(Map.of("arm", "412,5"), rear(draft.with(arm.path(), "412,5")).parameters());
        assertEquals(List.of(arm.path()), rearWarnings(draft));
        CarDraft wrong = draft.with(arm.path(), "long");
        assertEquals(List.of(arm.path()), wrong.read().problems().stream().map(Remark::path).toList());
    }

    @Test
    void parametersOfATypeThatIsNotInstalledStay() {
        Map<String, String> kept = Map.of("upper.inner.front", "12 480 175", "note", "");
        CarDraft draft = rear("seven-link", kept);
        assertEquals(new SuspensionChoice("seven-link", kept), rear(draft));
        assertEquals("12 480 175", draft.text(field(draft, "suspension.rear.parameters.upper.inner.front").path()));
        FieldKind.Choice types = (FieldKind.Choice) field(draft, "suspension.rear.type").kind();
        assertEquals(List.of("trailing-arm", "seven-link"), types.options().stream().map(FieldKind.Option::value).toList());
        assertEquals("seven-link (not installed)", types.options().get(1).words());
        assertEquals(List.of("suspension.rear.type"), rearWarnings(draft));
    }

    @Test
    void anotherTypeKeepsWhatWasTypedForTheFirst() {
        CarDraft draft = rear("seven-link", Map.of("upper.inner.front", "12 480 175")).with("suspension.rear.type", "trailing-arm")
                .with("suspension.rear.parameters.arm", "400");
        assertEquals(Map.of("upper.inner.front", "12 480 175", "arm", "400"), rear(draft).parameters());
        assertEquals(List.of("suspension.rear.parameters.upper.inner.front"), rearWarnings(draft));
    }
}
