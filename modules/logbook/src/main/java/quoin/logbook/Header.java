package quoin.logbook;

import java.time.Instant;
import java.util.Objects;

/**
 * What every entry carries.
 *
 * @param number 1 for the first entry of a day, then one more each; given by the journal
 * @param time   when it was recorded
 * @param stage  id of the stage it was recorded in, such as "ride-height"; empty where none
 */
public record Header(long number, Instant time, String stage) {
    public Header {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(stage, "stage");
    }

    /** The header of an entry that the journal has yet to number and date. */
    public static Header draft(String stage) {
        return new Header(0, Instant.EPOCH, stage);
    }
}
