package clutchwright.app.catalogue;

import java.util.List;
import java.util.Locale;

/// Loci that are passed on in the same way.
///
/// @param note what they have in common, for whoever does not know the word
public record GuideGroup(String title, String note, List<GuideEntry> entries) {

    public GuideGroup {
        entries = List.copyOf(entries);
    }

    public String id() {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
    }
}
