package clutchwright.app.collection;

import clutchwright.app.web.Form;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Query.SexWanted;
import clutchwright.records.animals.Query.Sort;
import clutchwright.records.animals.Status;
import clutchwright.records.places.RoomId;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Collectors;

/// What is asked of the list, as it stands in its address.
///
/// @param form the filters as they were sent; what cannot be read filters nothing
record Asked(Form form) {

    static final int PAGE = 50;

    private static final String PATH = "/collection";
    private static final List<String> FILTERS =
            List.of("find", "sex", "status", "room", "gene", "how", "season");

    /// How an animal must have the genes that are asked for.
    enum How {
        SHOWS,
        HAS,
        MAY_HAVE
    }

    Query query() {
        var query =
                Query.everything()
                        .withText(form.text("find"))
                        .withSex(sex())
                        .withStatuses(statuses())
                        .sortedBy(sort(), isFalling())
                        .page((page() - 1) * PAGE, PAGE);
        var inSeason = season().map(query::withSeason).orElse(query);
        return room().map(inSeason::withRoom).orElse(inSeason);
    }

    String gene() {
        return form.text("gene");
    }

    How how() {
        return member(How.class, "how").orElse(How.SHOWS);
    }

    Sort sort() {
        return member(Sort.class, "sort").orElse(Sort.TAG);
    }

    boolean isFalling() {
        return form.text("way").equals("down");
    }

    /// From one.
    int page() {
        return whole("page").filter(page -> page > 0 && page < 1_000_000).orElse(1);
    }

    boolean isFiltered() {
        return FILTERS.stream()
                .filter(field -> !field.equals("how"))
                .anyMatch(field -> !form.text(field).isEmpty());
    }

    /// The filters alone, as the end of an address; empty where nothing is filtered.
    String filters() {
        return end(kept(FILTERS));
    }

    /// The same list from its beginning, sorted by a column: the other way round where it is so
    /// sorted already.
    String sortedBy(Sort column) {
        var fields = kept(FILTERS);
        fields.put("sort", column.name().toLowerCase(Locale.ROOT));
        if (column == sort() && !isFalling()) {
            fields.put("way", "down");
        }
        return PATH + end(fields);
    }

    /// Another page of the same list.
    String onPage(int page) {
        var fields = kept(FILTERS);
        fields.putAll(kept(List.of("sort", "way")));
        fields.put("page", Integer.toString(page));
        return PATH + end(fields);
    }

    private SexWanted sex() {
        return member(SexWanted.class, "sex").orElse(SexWanted.ANY);
    }

    private Set<Status> statuses() {
        return form.text("status").equalsIgnoreCase("here")
                ? Set.of(Status.KEPT, Status.HOLD_BACK, Status.FOR_SALE, Status.LOANED)
                : member(Status.class, "status").map(Set::of).orElse(Set.of());
    }

    private Optional<RoomId> room() {
        return whole("room").map(RoomId::new);
    }

    private Optional<Integer> season() {
        return whole("season").filter(year -> year > 0 && year < 9999);
    }

    private Optional<Integer> whole(String field) {
        var text = form.text(field);
        return text.matches("[0-9]{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }

    private <E extends Enum<E>> Optional<E> member(Class<E> type, String field) {
        return Arrays.stream(type.getEnumConstants())
                .filter(member -> member.name().equalsIgnoreCase(form.text(field)))
                .findFirst();
    }

    private SequencedMap<String, String> kept(List<String> fields) {
        var kept = new LinkedHashMap<String, String>();
        for (var field : fields) {
            var text = form.text(field);
            if (!text.isEmpty() && !(field.equals("how") && gene().isEmpty())) {
                kept.put(field, text);
            }
        }
        return kept;
    }

    private static String end(SequencedMap<String, String> fields) {
        return fields.isEmpty()
                ? ""
                : fields.entrySet().stream()
                        .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                        .collect(Collectors.joining("&", "?", ""));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
