package quoin.exchange.incoming;

import java.util.Objects;
import quoin.car.ReadingId;

/** What a column of a table means. */
public sealed interface ColumnUse {

    /** Not looked at. */
    record Ignored() implements ColumnUse {
    }

    /** Holds one reading, a value a row. */
    record OneReading(ReadingId reading) implements ColumnUse {
        public OneReading {
            Objects.requireNonNull(reading, "reading");
        }
    }

    /** A part of a table with one figure a row. */
    record Part(Role role) implements ColumnUse {
    }

    /** Parts of a row that holds one figure. */
    enum Role {
        /** What was read: weight, camber. */
        NAME,
        /** Where: LF, a height point. */
        PLACE,
        /** The figure, with or without its unit. */
        VALUE,
        /** The unit of the figure. */
        UNIT,
        /** Figures of one settling have the same text here, such as an entry number. */
        TOGETHER,
        /** Only rows that say "reading" here are taken. */
        RECORD
    }

    ColumnUse IGNORED = new Ignored();
}
