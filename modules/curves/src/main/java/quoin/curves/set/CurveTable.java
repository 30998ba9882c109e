package quoin.curves.set;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;

/** Curves as a table of commas: decimal points, names with their units as the calculations of the command line have them. */
public final class CurveTable {

    private CurveTable() {
    }

    /** One row for each wheel and position; an output that does not exist is an empty cell. */
    public static String text(CurveSet set, List<CurveOutput> outputs) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            List<Object> head = new ArrayList<>(List.of("corner", "state", "wheelCentreTravel_mm", "rackTravelLeft_mm"));
            outputs.forEach(output -> head.add(output.key()));
            csv.printRecord(head);
            for (Curve curve : set.curves()) {
                for (CornerPosition position : curve.positions()) {
                    List<Object> row = new ArrayList<>(List.of(curve.corner().name(), curve.after() ? "after" : "before",
                            position.position().travelMm(), position.position().rackLeftMm()));
                    outputs.forEach(output -> row.add(position.value(output).isPresent()
                            ? position.value(output).getAsDouble() : ""));
                    csv.printRecord(row);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
