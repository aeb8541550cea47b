package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Animals that are made up to stand for parents who may be anybody.
final class Strangers {

    private final Map<String, Member> made = new LinkedHashMap<>();
    private long next;

    Strangers(Pedigree pedigree) {
        next = pedigree.members().stream().mapToLong(one -> one.id().value()).min().orElse(0);
    }

    /// The one for that key, made when first asked for.
    AnimalId of(String key, Sex sex) {
        return made.computeIfAbsent(
                        key,
                        _ ->
                                new Member(
                                        new AnimalId(--next),
                                        Optional.of(sex),
                                        Optional.empty(),
                                        new Parentage.Founder()))
                .id();
    }

    List<Member> members() {
        return List.copyOf(made.values());
    }
}
