package quoin.logbook.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quoin.car.AntiRollBar;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.MassZone;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.car.Targets;

/**
 * A car as a JSON object and back. Field names are those of the car's records and carry their units; what is unknown is
 * absent. A suspension type that is not installed keeps its parameters, since they are plain texts.
 */
public final class CarJson {

    /** Texts of the cross goals. */
    public static final Names<CrossGoal> CROSS_GOALS = Names.of(Map.of("equal-diagonals", CrossGoal.EQUAL_DIAGONALS,
            "equal-fronts", CrossGoal.EQUAL_FRONTS, "same-front-share", CrossGoal.SAME_FRONT_SHARE,
            "wanted", CrossGoal.WANTED));
    private static final Names<KnownMass.Role> ROLES = Names.of(Map.of("driver", KnownMass.Role.DRIVER,
            "fuel", KnownMass.Role.FUEL, "ballast", KnownMass.Role.BALLAST, "part", KnownMass.Role.PART));

    private CarJson() {
    }

    public static ObjectNode write(Car car) {
        ObjectNode node = StrictJson.object();
        node.put("id", car.id()).put("name", car.name()).put("wheelbaseMm", car.wheelbaseMm());
        ObjectNode axles = node.putObject("axles");
        for (Axle axle : Axle.values()) {
            writeAxle(axles.putObject(name(axle)), car.axles().get(axle));
        }
        ObjectNode corners = node.putObject("corners");
        for (Corner corner : Corner.values()) {
            writeCorner(corners.putObject(corner.name()), car.corners().get(corner));
        }
        writeMasses(node.putObject("masses"), car.masses());
        car.heightPoints().forEach(p -> writePoint(node.withArray("heightPoints").addObject(), p));
        writeTargets(node.putObject("targets"), car.targets());
        writeLoadCase(node.putObject("loadCase"), car.loadCase());
        node.putObject("instruments").put("scaleResolutionKg", car.instruments().scaleResolutionKg())
                .put("heightResolutionMm", car.instruments().heightResolutionMm())
                .put("angleResolutionDeg", car.instruments().angleResolutionDeg())
                .put("toeResolutionMm", car.instruments().toeResolutionMm());
        car.walkingOrder().forEach(c -> node.withArray("walkingOrder").add(c.name()));
        return node;
    }

    /**
     * Reads a car.
     *
     * @throws IllegalArgumentException where a field is missing, of the wrong type or out of its range
     */
    public static Car read(Fields in) {
        Fields axles = in.object("axles");
        Fields corners = in.object("corners");
        return new Car(in.text("id"), in.text("name"), in.number("wheelbaseMm"),
                new PerAxle<>(readAxle(axles.object("front")), readAxle(axles.object("rear"))),
                PerCorner.of(c -> readCorner(corners.object(c.name()))),
                readMasses(in.object("masses")),
                in.list("heightPoints", CarJson::readPoint),
                readTargets(in.object("targets")),
                readLoadCase(in.object("loadCase")),
                readInstruments(in.object("instruments")),
                in.texts("walkingOrder", Corner::parse));
    }

    private static void writeAxle(ObjectNode node, AxleSetup axle) {
        node.put("trackMm", axle.trackMm());
        axle.bar().ifPresent(bar -> put(node.putObject("bar"), "rollRateNPerMm", bar.rollRateNPerMm()));
        ObjectNode suspension = node.putObject("suspension").put("typeId", axle.suspension().typeId());
        ObjectNode parameters = suspension.putObject("parameters");
        axle.suspension().parameters().forEach(parameters::put);
    }

    private static AxleSetup readAxle(Fields in) {
        Fields suspension = in.object("suspension");
        Map<String, String> parameters = new TreeMap<>();
        suspension.forEach("parameters", (key, values) -> parameters.put(key, values.text(key)));
        return new AxleSetup(in.number("trackMm"),
                in.optionalObject("bar").map(bar -> new AntiRollBar(bar.optionalNumber("rollRateNPerMm"))),
                new SuspensionChoice(suspension.text("typeId"), parameters));
    }

    private static void writeCorner(ObjectNode node, CornerSetup corner) {
        put(node, "springRateNPerMm", corner.springRateNPerMm());
        put(node, "motionRatio", corner.motionRatio());
        put(node, "pushrodRatio", corner.pushrodRatio());
        put(node, "tyreRateNPerMm", corner.tyreRateNPerMm());
        put(node, "unsprungMassKg", corner.unsprungMassKg());
        put(node, "rimChordMm", corner.rimChordMm());
        corner.adjusters().forEach(a -> AdjusterJson.write(node.withArray("adjusters").addObject(), a));
    }

    private static CornerSetup readCorner(Fields in) {
        return new CornerSetup(in.optionalNumber("springRateNPerMm"), in.optionalNumber("motionRatio"),
                in.optionalNumber("pushrodRatio"), in.optionalNumber("tyreRateNPerMm"), in.optionalNumber("unsprungMassKg"),
                in.optionalNumber("rimChordMm"),
                in.list("adjusters", AdjusterJson::read));
    }

    private static void writeMasses(ObjectNode node, Masses masses) {
        put(node, "totalKg", masses.totalKg());
        put(node, "cgHeightMm", masses.cgHeightMm());
        masses.known().forEach(m -> node.withArray("known").addObject().put("name", m.name()).put("role", ROLES.text(m.role()))
                .put("massKg", m.massKg()).put("xMm", m.xMm()).put("yMm", m.yMm()).put("zMm", m.zMm()));
        masses.zones().forEach(z -> node.withArray("zones").addObject().put("name", z.name()).put("rearXMm", z.rearXMm())
                .put("frontXMm", z.frontXMm()).put("rightYMm", z.rightYMm()).put("leftYMm", z.leftYMm()).put("zMm", z.zMm()));
    }

    private static Masses readMasses(Fields in) {
        return new Masses(in.optionalNumber("totalKg"), in.optionalNumber("cgHeightMm"), in.list("known",
                m -> new KnownMass(m.text("name"), m.parsed("role", ROLES::read), m.number("massKg"), m.number("xMm"),
                        m.number("yMm"), m.number("zMm"))), in.list("zones",
                z -> new MassZone(z.text("name"), z.number("rearXMm"), z.number("frontXMm"), z.number("rightYMm"),
                        z.number("leftYMm"), z.number("zMm"))));
    }

    private static void writePoint(ObjectNode node, HeightPoint point) {
        node.put("name", point.name());
        point.corner().ifPresent(c -> node.put("corner", c.name()));
        put(node, "xMm", point.xMm());
        put(node, "yMm", point.yMm());
    }

    private static HeightPoint readPoint(Fields in) {
        return new HeightPoint(in.text("name"), in.optionalText("corner").map(text -> in.parsed("corner", Corner::parse)),
                in.optionalNumber("xMm"), in.optionalNumber("yMm"));
    }

    private static void writeTargets(ObjectNode node, Targets targets) {
        ObjectNode readings = node.putObject("readings");
        targets.readings().forEach((id, t) -> readings.putObject(id.toString()).put("value", t.value())
                .put("tolerance", t.tolerance()));
        node.put("crossGoal", CROSS_GOALS.text(targets.crossGoal()));
    }

    private static Targets readTargets(Fields in) {
        Map<ReadingId, Target> readings = new LinkedHashMap<>();
        in.forEach("readings", (key, all) -> {
            Fields target = all.object(key);
            readings.put(ReadingId.parse(key), new Target(target.number("value"), target.number("tolerance")));
        });
        return new Targets(readings, in.parsed("crossGoal", CROSS_GOALS::read));
    }

    private static void writeLoadCase(ObjectNode node, LoadCase loadCase) {
        node.put("driver", loadCase.driver());
        put(node, "fuelKg", loadCase.fuelKg());
        ObjectNode pressure = node.putObject("pressureBar");
        put(pressure, "front", loadCase.pressureBar().front());
        put(pressure, "rear", loadCase.pressureBar().rear());
    }

    private static LoadCase readLoadCase(Fields in) {
        Fields pressure = in.object("pressureBar");
        return new LoadCase(in.text("driver"), in.optionalNumber("fuelKg"),
                new PerAxle<>(pressure.optionalNumber("front"), pressure.optionalNumber("rear")));
    }

    private static Instruments readInstruments(Fields in) {
        return new Instruments(in.number("scaleResolutionKg"), in.number("heightResolutionMm"), in.number("angleResolutionDeg"),
                in.number("toeResolutionMm"));
    }

    private static String name(Axle axle) {
        return axle == Axle.FRONT ? "front" : "rear";
    }

    static void put(ObjectNode node, String name, OptionalDouble value) {
        value.ifPresent(v -> node.put(name, v));
    }
}
