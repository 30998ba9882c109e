package quoin.setupsheet.page;

import java.util.List;
import java.util.Objects;

/** A finished page. */
public record Page(Paper paper, List<Ink> ink) {
    public Page {
        Objects.requireNonNull(paper, "paper");
        ink = List.copyOf(ink);
    }
}
