package clutchwright.records.exchange;

import clutchwright.records.animals.Status;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// The words by which breeders say what an animal is to the collection.
final class StatusWords {

    private static final Map<String, Status> WORDS = words();

    private StatusWords() {}

    /// The word in our own files.
    static String write(Status status) {
        return status.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static List<String> expected() {
        return Arrays.stream(Status.values()).map(StatusWords::write).toList();
    }

    /// Blank counts as kept.
    static Optional<Status> read(String written) {
        var key = written.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
        return Optional.ofNullable(WORDS.get(key));
    }

    private static Map<String, Status> words() {
        var words = new LinkedHashMap<String, Status>();
        add(
                words,
                Status.KEPT,
                ",kept,keep,keeper,active,owned,breeder,breeding,in collection,collection,here,"
                        + "mine,own,alive,living,current,proven,adult,not for sale,nfs");
        add(words, Status.HOLD_BACK, "hold back,holdback,held back,hold,on hold,growing out");
        add(
                words,
                Status.FOR_SALE,
                "for sale,available,sale,selling,fs,listed,to sell,offered,on offer");
        add(words, Status.SOLD, "sold,gone,rehomed,traded,given away,left");
        add(words, Status.LOANED, "loaned,loan,on loan,breeding loan,lent,loaned out,out on loan");
        add(words, Status.DEAD, "dead,died,deceased,dod,passed,euthanised,euthanized,lost");
        add(words, Status.UNKNOWN, "unknown,unk,not known");
        return Map.copyOf(words);
    }

    private static void add(Map<String, Status> words, Status status, String all) {
        for (var word : all.split(",", -1)) {
            words.put(word, status);
        }
    }
}
