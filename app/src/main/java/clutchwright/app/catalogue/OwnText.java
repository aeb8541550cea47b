package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.CatalogueText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/// A text that a keeper wrote: one locus, and whatever else goes with it, such as the names of
/// combinations.
record OwnText(String text) {

    /// Pages that stand beside those of the loci.
    private static final Set<String> TAKEN = Set.of("new", "names", "reading");

    private static final Pattern LOCUS = Pattern.compile("locus(\\s+(.*?))?\\s*(#.*)?");

    /// The locus, if it is the only one.
    Optional<String> locus() {
        var loci = loci();
        return loci.size() == 1 ? Optional.of(loci.getFirst().name()) : Optional.empty();
    }

    /// What is wrong with it as the text of a locus that is not there yet.
    List<CatalogueText.Fault> faultsAsNew(Set<String> known) {
        var faults = new ArrayList<>(faultsAsOne());
        for (var at : loci()) {
            if (known.contains(at.name()) || TAKEN.contains(at.name())) {
                faults.add(fault(at, "which is there already", "another name for a new gene"));
            }
        }
        return faults;
    }

    /// What is wrong with it as the text of that locus.
    List<CatalogueText.Fault> faultsAs(String locus) {
        var faults = new ArrayList<>(faultsAsOne());
        for (var at : loci()) {
            if (!at.name().equals(locus)) {
                faults.add(fault(at, "on the page of another", "locus " + locus));
            }
        }
        return faults;
    }

    /// All but the locus itself.
    String beside() {
        var beside = new StringBuilder();
        boolean within = false;
        for (var line : text.lines().toList()) {
            if (!line.isBlank() && !Character.isWhitespace(line.charAt(0))) {
                within = LOCUS.matcher(line).matches();
            }
            if (!within && !line.isBlank()) {
                beside.append(line).append('\n');
            }
        }
        return beside.toString();
    }

    /// Where a name begins a block, from 1; the first line if none does.
    int lineOf(String key, String name) {
        var lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            var words = lines.get(i).strip().split("\\s+", 2);
            if (words.length == 2 && words[0].equals(key) && words[1].strip().equals(name)) {
                return i + 1;
            }
        }
        return 1;
    }

    private List<CatalogueText.Fault> faultsAsOne() {
        return loci().isEmpty()
                ? List.of(new CatalogueText.Fault("", 1, "no 'locus'", "'locus' with a short name"))
                : loci().stream()
                        .skip(1)
                        .map(at -> fault(at, "beside the first", "one locus at a time"))
                        .toList();
    }

    private static CatalogueText.Fault fault(At at, String why, String expected) {
        return new CatalogueText.Fault(
                "", at.line(), "locus '%s', %s".formatted(at.name(), why), expected);
    }

    private List<At> loci() {
        var found = new ArrayList<At>();
        var lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            var matcher = LOCUS.matcher(lines.get(i));
            if (matcher.matches()) {
                found.add(new At(i + 1, Optional.ofNullable(matcher.group(2)).orElse("").strip()));
            }
        }
        return found;
    }

    private record At(int line, String name) {}
}
