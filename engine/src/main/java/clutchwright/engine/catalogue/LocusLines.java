package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.LocusId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/// Where each locus of a text begins.
final class LocusLines {

    private final Map<LocusId, TextLine> lines = new LinkedHashMap<>();

    /// Whether it is the first of its name, so that it was added.
    boolean add(LocusId id, TextLine line) {
        return lines.putIfAbsent(id, line) == null;
    }

    boolean has(LocusId id) {
        return lines.containsKey(id);
    }

    Set<LocusId> ids() {
        return lines.keySet();
    }

    TextLine theLine(LocusId id) {
        return Objects.requireNonNull(lines.get(id), "no line begins locus " + id);
    }
}
