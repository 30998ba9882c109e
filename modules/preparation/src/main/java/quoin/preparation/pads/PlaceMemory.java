package quoin.preparation.pads;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.GaragePlace;
import quoin.logbook.GaragePlaces;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;

/** The garage places beside the open day, and the one the car stands in. A place that cannot be read is left as it is. */
@Messages("place.usual=Garage")
final class PlaceMemory {

    private final Optional<Journal> journal;
    private final Optional<GaragePlaces> places;
    private Optional<GaragePlace> chosen = Optional.empty();

    private PlaceMemory(Optional<Journal> journal) {
        this.journal = journal;
        this.places = journal.flatMap(j -> GaragePlaces.beside(j.folder()));
    }

    static PlaceMemory of(Optional<Journal> journal) {
        return new PlaceMemory(journal);
    }

    boolean isOf(Optional<Journal> other) {
        return journal.equals(other);
    }

    /** False where the day lies in no library. */
    boolean isKept() {
        return places.isPresent();
    }

    List<String> names() {
        try {
            return places.map(GaragePlaces::all).orElse(List.of()).stream().map(GaragePlace::name).toList();
        } catch (JournalException e) {
            return List.of();
        }
    }

    /** The place to begin with: the only one there is, or the first. */
    String usualName() {
        return names().stream().findFirst().orElse(Bundle.place_usual());
    }

    /** Chooses a place by name; one that is not there yet begins empty. */
    void choose(String name) {
        try {
            chosen = name.isBlank() ? Optional.empty() : places.map(p -> p.called(name));
        } catch (JournalException e) {
            chosen = Optional.empty();
        }
    }

    Optional<GaragePlace> place() {
        return chosen;
    }

    /**
     * Changes the chosen place and saves it.
     *
     * @throws JournalException where it cannot be saved
     */
    void save(UnaryOperator<GaragePlace> change) {
        if (places.isPresent() && chosen.isPresent()) {
            GaragePlace changed = change.apply(chosen.get());
            places.get().save(changed);
            chosen = Optional.of(changed);
        }
    }
}
