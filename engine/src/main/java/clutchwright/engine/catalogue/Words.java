package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.SexDetermination;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// The words that stand for the members of an enum in a species file.
final class Words {

    private static final Pattern SEPARATORS = Pattern.compile("[\\s-]+");

    private Words() {}

    static String of(Mode mode) {
        return lower(mode).replace('_', ' ');
    }

    static String of(Enum<?> member) {
        return lower(member).replace('_', '-');
    }

    /// The member that is written so; a hyphen and a space count alike.
    static <E extends Enum<E>> Optional<E> find(List<E> members, String written) {
        var name = SEPARATORS.matcher(written.strip().toUpperCase(Locale.ROOT)).replaceAll("_");
        return members.stream().filter(member -> member.name().equals(name)).findFirst();
    }

    static List<String> all(List<? extends Enum<?>> members) {
        return members.stream().map(Words::written).toList();
    }

    /// The parts of a list, which stand between semicolons.
    static List<String> list(String value) {
        return Stream.of(value.split(";"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static String written(Enum<?> member) {
        return switch (member) {
            case Mode mode -> of(mode);
            case SexDetermination sexes -> sexes.name();
            case Enum<?> other -> of(other);
        };
    }

    private static String lower(Enum<?> member) {
        return member.name().toLowerCase(Locale.ROOT);
    }
}
