package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.LoadCase;
import quoin.car.MassZone;
import quoin.car.PerAxle;

class CarFileTest {

    @TempDir
    Path folder;

    @Test
    void carComesBackAsItWas() {
        for (Car car : List.of(Samples.fullCar(), Samples.bareCar())) {
            Path file = folder.resolve(car.id()).resolve("car.json");
            CarFile.write(file, car);
            assertEquals(car, CarFile.read(file));
            assertEquals(car, CarFile.fromText(CarFile.toText(car)));
            assertEquals(List.copyOf(car.targets().readings().keySet()),
                    List.copyOf(CarFile.read(file).targets().readings().keySet()), "the order of the targets stays");
        }
    }

    /** What the sample leaves unknown: places for ballast, and the pressure of the rear tyres. */
    @Test
    void placesForBallastAndBothPressuresComeBack() {
        Car full = Samples.fullCar();
        MassZone floor = new MassZone("floor", -1500, -900, -300, 250, 90);
        Car car = full.withMasses(full.masses().with(full.masses().known(), List.of(floor, new MassZone("nose", 200, 300, 0, 0, 150))))
                .withLoadCase(new LoadCase("Ann", OptionalDouble.empty(), new PerAxle<>(OptionalDouble.empty(), OptionalDouble.of(1.45))));
        Car back = CarFile.fromText(CarFile.toText(car));
        assertEquals(floor, back.masses().zones().get(0));
        assertEquals(car, back);
    }

    @Test
    void suspensionThatIsNotInstalledKeepsItsParameters() {
        Car car = CarFile.fromText(CarFile.toText(Samples.fullCar()));
        assertEquals("sliding-pillar", car.axles().get(Axle.REAR).suspension().typeId());
        assertEquals("6\u00b030'", car.axles().get(Axle.REAR).suspension().parameters().get("pillar angle"));
    }

    @Test
    void unknownValuesAreAbsentAndUnitsAreInTheNames() {
        String bare = CarFile.toText(Samples.bareCar());
        assertFalse(bare.contains("springRateNPerMm") || bare.contains("null") || bare.contains("NaN"), bare);
        assertTrue(CarFile.toText(Samples.fullCar()).contains("\"springRateNPerMm\" : 61.3"));
    }

    @Test
    void fieldsOfAnotherProgramSurviveSavingAndClearedValuesDoNotComeBack() throws IOException {
        Path file = folder.resolve("car.json");
        Files.writeString(file, CarFile.toText(Samples.fullCar()).replaceFirst("\"name\"", "\"paint\":{\"colour\":\"blue\"},\"name\"")
                .replaceFirst("\"trackMm\"", "\"hubs\":[1],\"trackMm\"").replaceFirst("\"quoin\"", "\"by\":\"Ann\",\"quoin\""));
        CarFile.write(file, Samples.bareCar());
        String saved = Files.readString(file);
        assertTrue(saved.contains("blue") && saved.contains("hubs") && saved.contains("Ann"), saved);
        assertFalse(saved.contains("springRateNPerMm") || saved.contains("totalKg"), saved);
        assertEquals(Samples.bareCar(), CarFile.read(file));
    }

    @Test
    void newerOrDamagedFileIsNotOverwritten() throws IOException {
        Path file = folder.resolve("car.json");
        for (String text : List.of(CarFile.toText(Samples.fullCar()).replace("\"format\" : 1", "\"format\" : 2"), "rubbish")) {
            Files.writeString(file, text);
            assertThrows(JournalException.class, () -> CarFile.read(file));
            JournalException e = assertThrows(JournalException.class, () -> CarFile.write(file, Samples.bareCar()));
            assertTrue(e.getMessage().contains("rename that file"), e.getMessage());
            assertEquals(text, Files.readString(file));
        }
    }

    @Test
    void savingLeavesNoOtherFiles() throws IOException {
        Path file = folder.resolve("car.json");
        CarFile.write(file, Samples.bareCar());
        CarFile.write(file, Samples.fullCar());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void wrongFieldIsNamedWithItsPath() {
        String text = CarFile.toText(Samples.fullCar());
        assertMessage(text.replaceFirst("\"springRateNPerMm\" : 61.3", "\"springRateNPerMm\" : \"61.3\""),
                "corners.LF.springRateNPerMm must be a finite number");
        assertMessage(text.replaceFirst("\"springRateNPerMm\" : 61.3", "\"springRateNPerMm\" : -1"), "spring rate must be a number greater");
        assertMessage(text.replaceFirst("\"stepsPerTurn\" : 8", "\"stepsPerTurn\" : 8.5"), "corners.LF.adjusters[0].thread.stepsPerTurn");
        assertMessage(text.replaceFirst("\"thread\"", "\"threat\""), "corners.LF.adjusters[0].shims is missing");
        assertMessage(text.replaceFirst("\"locked\" : false", "\"locked\" : 0"), "corners.LF.adjusters[0].locked must be true or false");
        assertMessage(text.replaceFirst("\"role\" : \"driver\"", "\"role\" : \"boss\""), "masses.known[0].role: 'boss' is none of");
        assertMessage(text.replaceFirst("\"quoin\" : \"car\"", "\"quoin\" : \"day\""), "quoin must be \"car\"");
        assertMessage("{\"quoin\":\"car\",\"format\":1}", "car is missing");
    }

    private static void assertMessage(String text, String message) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> CarFile.fromText(text));
        assertTrue(e.getMessage().contains(message), e.getMessage());
    }
}
