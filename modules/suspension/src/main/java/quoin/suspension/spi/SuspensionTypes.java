package quoin.suspension.spi;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.openide.util.Lookup;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.SuspensionChoice;
import quoin.mechanics.InvalidInputException;
import quoin.suspension.AngleResponse;
import quoin.suspension.CornerKinematics;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;

/**
 * The suspension types at hand. A type that is not among them is a normal case: its parameters stay in the car as they
 * are, and nothing is known of its angles.
 */
public final class SuspensionTypes {
    private final List<SuspensionType> types;

    /** @throws IllegalArgumentException where two types have the same id */
    public SuspensionTypes(List<? extends SuspensionType> types) {
        List<SuspensionType> sorted = new ArrayList<>(types);
        sorted.sort(Comparator.comparing(SuspensionType::name));
        Set<String> ids = new HashSet<>();
        for (SuspensionType type : sorted) {
            if (!ids.add(type.id())) {
                throw new IllegalArgumentException("two suspension types have the id " + type.id());
            }
        }
        this.types = List.copyOf(sorted);
    }

    /** Those that are installed; call it at the edge and hand the result on. */
    public static SuspensionTypes installed() {
        return new SuspensionTypes(List.copyOf(Lookup.getDefault().lookupAll(SuspensionType.class)));
    }

    /** All of them, by name. */
    public List<SuspensionType> all() {
        return types;
    }

    public Optional<SuspensionType> find(String id) {
        return types.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** Reads the parameters of a choice; empty where the type is not installed. */
    public Optional<ParameterReading> read(SuspensionChoice choice) {
        return find(choice.typeId()).map(t -> ParameterValues.read(t.parameters(), choice.parameters()));
    }

    /**
     * One corner of a car; empty where its type is not installed or a parameter is missing or cannot be read, which
     * {@link #read} tells in words.
     *
     * @throws InvalidInputException naming the parameter that no such suspension can have
     */
    public Optional<CornerKinematics> corner(Car car, Corner corner) {
        SuspensionChoice choice = car.axles().get(corner.axle()).suspension();
        return find(choice.typeId()).flatMap(type -> {
            ParameterReading reading = ParameterValues.read(type.parameters(), choice.parameters());
            return reading.isUsable() ? Optional.of(type.corner(reading.values(), Side.of(corner))) : Optional.empty();
        });
    }

    /**
     * The response of one corner with the adjusters fitted to it; {@link AngleResponse#unknown} where the type is not
     * installed or its parameters do not make a suspension, which {@link #read} and {@link #corner} tell in words.
     */
    public AngleResponse response(Car car, Corner corner) {
        try {
            return corner(car, corner).map(k -> k.response(car.corners().get(corner).adjusters()))
                    .orElseGet(AngleResponse::unknown);
        } catch (InvalidInputException e) {
            return AngleResponse.unknown();
        }
    }

    /** Whether the type of an axle is at hand. */
    public boolean has(Car car, Axle axle) {
        return find(car.axles().get(axle).suspension().typeId()).isPresent();
    }
}
