package quoin.logbook;

import java.util.Objects;

/**
 * A day of a library as a list shows it and a search finds it.
 *
 * @param carId     id of its car
 * @param carName   what the racer calls the car
 * @param day       id, title and folder of the day
 * @param driver    driver of the load case; may be empty
 * @param words     notes, tyres and other things said that day; may be empty
 * @param closed    true where the day is closed
 * @param rehearsal true where the practice car gave the readings
 * @param archived  true where the day or its car was put into the archive
 */
public record KnownDay(String carId, String carName, DayInfo day, String driver, String words, boolean closed, boolean rehearsal,
        boolean archived) {
    public KnownDay {
        Objects.requireNonNull(carId, "carId");
        Objects.requireNonNull(carName, "carName");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(driver, "driver");
        Objects.requireNonNull(words, "words");
    }
}
