package clutchwright.engine.catalogue;

import java.util.List;

/// A word of the trade that names no gene: it is kept as a remark.
public record Remark(String name, List<String> synonyms, String note) {

    public Remark {
        synonyms = List.copyOf(synonyms);
    }
}
