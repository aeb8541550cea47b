package clutchwright.records;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.records.animals.Animal;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/// The animals of one species and what is said and seen of them, as inference takes them.
///
/// @param lines how their genes are written
public record SpeciesRecords(GeneLine lines, CollectionRecords records) {

    public Catalogue catalogue() {
        return lines.catalogue();
    }

    /// Each species that animals are of, by its short name, in the order of the first animal.
    ///
    /// @param statements newest first
    /// @param lines of a species by its short name
    /// @throws IllegalArgumentException if the descent is not sound
    public static Map<String, SpeciesRecords> of(
            Collection<Animal> animals,
            Map<AnimalId, List<Statement>> statements,
            Function<String, GeneLine> lines) {
        var bySpecies =
                animals.stream()
                        .collect(
                                Collectors.groupingBy(
                                        Animal::species, LinkedHashMap::new, Collectors.toList()));
        var all = new LinkedHashMap<String, SpeciesRecords>();
        bySpecies.forEach(
                (species, some) ->
                        all.put(species, of(lines.apply(species), some, latest(statements))));
        return all;
    }

    private static SpeciesRecords of(
            GeneLine lines, Collection<Animal> animals, Function<AnimalId, Latest> latest) {
        return switch (Pedigree.of(members(animals))) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new SpeciesRecords(
                            lines,
                            new CollectionRecords(
                                    lines.catalogue().model(),
                                    pedigree,
                                    own(lines, animals, latest)));
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalArgumentException("a descent that is not sound: " + faults);
        };
    }

    /// As a pedigree of their species knows them: a parent of another species says nothing
    /// about the genes of this one.
    private static List<Member> members(Collection<Animal> animals) {
        var ids = animals.stream().map(Animal::id).collect(Collectors.toSet());
        return animals.stream().map(animal -> within(ids, animal.member())).toList();
    }

    private static Map<AnimalId, OwnRecords> own(
            GeneLine lines, Collection<Animal> animals, Function<AnimalId, Latest> latest) {
        var own = new HashMap<AnimalId, OwnRecords>();
        for (var animal : animals) {
            var found = latest.apply(animal.id());
            if (!found.equals(Latest.nothing())) {
                own.put(animal.id(), OwnStatements.of(lines, found, animal.sex()));
            }
        }
        return own;
    }

    private static Member founder(Member member) {
        return new Member(member.id(), member.sex(), member.hatched(), new Parentage.Founder());
    }

    private static Member within(Set<AnimalId> ids, Member member) {
        var parents = new ArrayList<>(member.parentage().dams());
        parents.addAll(member.parentage().sires());
        return ids.containsAll(parents) ? member : founder(member);
    }

    private static Function<AnimalId, Latest> latest(Map<AnimalId, List<Statement>> statements) {
        return animal -> Latest.among(statements.getOrDefault(animal, List.of()));
    }
}
