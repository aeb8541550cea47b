package clutchwright.app.web;

import clutchwright.app.wording.Formats;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// What stands around every view.
///
/// @param sections the screens that exist
/// @param find what stands in the find box
/// @param figures how far the figures on the page have come
/// @param signedIn whether there is something to sign out of
/// @param house the mark of the collection, by which a phone knows it again; empty where nobody is
///     in yet
/// @param today the day on which the page is drawn
public record Frame(
        String title,
        Optional<Section> section,
        List<Section> sections,
        Optional<Flash> flash,
        Csrf csrf,
        Formats formats,
        Assets assets,
        String find,
        boolean signedIn,
        Figures.State figures,
        String house,
        LocalDate today) {

    public Frame {
        sections = List.copyOf(sections);
    }

    /// The mark on the page that tells the style sheet which look was chosen.
    public String look() {
        return switch (formats.preferences().look()) {
            case AS_THE_DEVICE -> "auto";
            case LIGHT, DARK -> formats.preferences().look().name().toLowerCase(Locale.ROOT);
        };
    }

    public boolean isCurrent(Section other) {
        return section.filter(other::equals).isPresent();
    }

    /// Whether there is a collection to search.
    public boolean hasCollection() {
        return sections.contains(Section.COLLECTION);
    }

    /// The token that every form must send back, so that no other site can post in our name.
    public record Csrf(String field, String header, String token) {}
}
