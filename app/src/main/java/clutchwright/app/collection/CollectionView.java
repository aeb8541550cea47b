package clutchwright.app.collection;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.animals.Query.Sort;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/// The list of animals.
///
/// @param form the filters in force
/// @param held how many are on record in all
/// @param total how many were found
/// @param first the first of this page, from one
/// @param changes the form by which several are changed at once
public record CollectionView(
        Form form,
        List<CollectionRow> rows,
        int held,
        int total,
        int first,
        List<Choice> rooms,
        List<SavedFilter> saved,
        Form changes)
        implements View {

    public CollectionView {
        rows = List.copyOf(rows);
        rooms = List.copyOf(rooms);
        saved = List.copyOf(saved);
    }

    @Override
    public String template() {
        return "collection/collection.jte";
    }

    @Override
    public String title() {
        return "Collection";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }

    public boolean isEmpty() {
        return held == 0;
    }

    public int last() {
        return first + rows.size() - 1;
    }

    public boolean hasEarlier() {
        return asked().page() > 1;
    }

    public boolean hasLater() {
        return last() < total && !rows.isEmpty();
    }

    public String earlier() {
        return asked().onPage(asked().page() - 1);
    }

    public String later() {
        return asked().onPage(asked().page() + 1);
    }

    public String sortedBy(Sort column) {
        return asked().sortedBy(column);
    }

    /// What a reader of text is told of a column's order.
    public String order(Sort column) {
        return column != asked().sort() ? "none" : asked().isFalling() ? "descending" : "ascending";
    }

    /// The address of the list as it is seen now.
    public String here() {
        return asked().onPage(asked().page());
    }

    /// The filters alone, as the end of an address.
    public String filters() {
        return asked().filters();
    }

    /// Where labels of all that is listed are printed, on this page and the others.
    public String labels() {
        return "/labels?of=" + URLEncoder.encode("filter" + filters(), StandardCharsets.UTF_8);
    }

    public boolean isFiltered() {
        return asked().isFiltered();
    }

    public List<Choice> sexes() {
        return List.of(
                new Choice("", "Any sex"),
                new Choice("female", "Females"),
                new Choice("male", "Males"),
                new Choice("unsexed", "Not sexed"));
    }

    public List<Choice> statuses() {
        return StatusChoices.toFilter();
    }

    public List<Choice> statusesToSet() {
        return StatusChoices.orNone("Leave as it is");
    }

    public List<Choice> hows() {
        return List.of(
                new Choice("shows", "shows it"),
                new Choice("has", "has it for certain"),
                new Choice("may_have", "has or may have it"));
    }

    private Asked asked() {
        return new Asked(form);
    }
}
