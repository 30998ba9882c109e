package quoin.logbook;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A place where cars are set up: its shims, what lies under each pad, and how the pads stood when they were last surveyed.
 *
 * @param id      stable; names its file
 * @param name    as the racer calls it
 * @param stock   every shim that belongs to the place, those under the pads included
 * @param underMm thicknesses lying under each pad now, mm
 * @param survey  the last survey with these shims; empty = not surveyed yet
 */
public record GaragePlace(String id, String name, List<Setting.Shim> stock, PerCorner<List<Double>> underMm, Optional<Survey> survey) {
    private static final Texts TEXTS = Texts.of(GaragePlace.class);

    /**
     * How the pads stood.
     *
     * @param when      when they were surveyed
     * @param method    stable name of the method
     * @param heightsMm heights of the four tops above the lowest, mm
     * @param carOn     true where the car stood on them
     */
    public record Survey(Instant when, String method, PerCorner<Double> heightsMm, boolean carOn) {
        public Survey {
            Objects.requireNonNull(when, "when");
            Objects.requireNonNull(method, "method");
            Objects.requireNonNull(heightsMm, "heightsMm");
        }
    }

    public GaragePlace {
        if (name.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("garagePlaceNeedsA"));
        }
        stock = List.copyOf(stock);
        underMm = underMm.map(List::copyOf);
        Objects.requireNonNull(survey, "survey");
    }

    /** A place nothing is known of. */
    public static GaragePlace named(String id, String name) {
        return new GaragePlace(id, name, List.of(), PerCorner.all(List.of()), Optional.empty());
    }

    public GaragePlace withStock(List<Setting.Shim> changed) {
        return new GaragePlace(id, name, changed, underMm, survey);
    }

    public GaragePlace with(PerCorner<List<Double>> under, Optional<Survey> surveyed) {
        return new GaragePlace(id, name, stock, under, surveyed);
    }
}
