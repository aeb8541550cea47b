package clutchwright.engine.notation;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/// What a word of the trade does in a line, if it names no gene.
enum Role {
    NONE,
    HET,
    /// `ph`: possible het in one word.
    POSSIBLE_HET,
    /// `DH`, `TH`: so many hets in one word.
    COUNTED_HET,
    /// `double`, `triple`, before `het`.
    COUNT,
    DOUBT,
    PROVEN,
    TESTED,
    NEGATIVE,
    SUPER,
    HOMOZYGOUS,
    VISUAL,
    NORMAL,
    WILD,
    TYPE,
    MALE,
    FEMALE,
    UNSEXED,
    MAKER,
    MALE_MAKER,
    FEMALE_MAKER,
    OR,
    AND,
    FOR,
    LINE,
    TIMES,
    ORIGIN;

    private static final Map<String, Role> WORDS = words();
    private static final Map<String, Integer> COUNTS =
            Map.ofEntries(
                    Map.entry("dh", 2),
                    Map.entry("double", 2),
                    Map.entry("dbl", 2),
                    Map.entry("doubl", 2),
                    Map.entry("th", 3),
                    Map.entry("triple", 3),
                    Map.entry("trip", 3),
                    Map.entry("trpl", 3),
                    Map.entry("qh", 4),
                    Map.entry("quad", 4),
                    Map.entry("quadruple", 4),
                    Map.entry("quint", 5),
                    Map.entry("quintuple", 5));

    /// Words that may stand glued to a name: `HETpied`.
    private static final Set<Role> GLUED =
            Set.of(
                    HET,
                    POSSIBLE_HET,
                    COUNTED_HET,
                    COUNT,
                    DOUBT,
                    SUPER,
                    HOMOZYGOUS,
                    VISUAL,
                    NORMAL,
                    MALE_MAKER,
                    FEMALE_MAKER,
                    MALE,
                    FEMALE,
                    MAKER);

    static Role of(String word) {
        if (word.length() > 14) {
            return NONE;
        }
        var lower = word.toLowerCase(Locale.ROOT);
        if (lower.length() == 2 && lower.charAt(0) == 'f' && isGeneration(lower.charAt(1))) {
            return ORIGIN;
        }
        return WORDS.getOrDefault(lower, NONE);
    }

    /// How many hets `double` or `DH` announces; 0 for other words.
    static int count(String word) {
        return COUNTS.getOrDefault(word.toLowerCase(Locale.ROOT), 0);
    }

    boolean mayBeGlued() {
        return GLUED.contains(this);
    }

    private static boolean isGeneration(char digit) {
        return digit >= '1' && digit <= '9';
    }

    private static Map<String, Role> words() {
        var words = new TreeMap<String, Role>();
        add(words, HET, "het hets heterozygous hetero heterozygot heteros");
        add(words, POSSIBLE_HET, "ph phet");
        add(words, COUNTED_HET, "dh th qh");
        add(words, COUNT, "double dbl doubl triple trip trpl quad quadruple quint quintuple");
        add(words, DOUBT, "maybe possible possibly posible poss pos prob probable probably");
        add(words, DOUBT, "perhaps likely potential potentially suspected");
        add(words, PROVEN, "proven proved confirmed guaranteed certain");
        add(words, TESTED, "tested test dna shed genetically lab");
        add(words, NEGATIVE, "neg negative");
        add(words, SUPER, "super supers");
        add(words, HOMOZYGOUS, "homo homozygous hom");
        add(words, VISUAL, "visual visuals viz vis");
        add(words, NORMAL, "normal normals wt wildtype classic norm");
        add(words, WILD, "wild");
        add(words, TYPE, "type");
        add(words, MALE, "male males m");
        add(words, FEMALE, "female females f");
        add(words, UNSEXED, "unsexed");
        add(words, MAKER, "maker makers");
        add(words, MALE_MAKER, "mm malemaker");
        add(words, FEMALE_MAKER, "fm femalemaker");
        add(words, OR, "or");
        add(words, AND, "and with w plus");
        add(words, FOR, "for of");
        add(words, LINE, "line");
        add(words, TIMES, "x");
        add(words, ORIGIN, "cb cbb ch ltc wc");
        return Map.copyOf(words);
    }

    private static void add(Map<String, Role> words, Role role, String list) {
        for (var word : list.split(" ", -1)) {
            words.put(word, role);
        }
    }
}
