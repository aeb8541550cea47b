package clutchwright.records;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.settings.Settings;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/// What is on record at one moment and bears on what animals carry: who descends from whom, and
/// what was said and seen of each.
///
/// @param bySpecies of the species that animals are of
public record OnRecord(
        SequencedMap<AnimalId, Animal> animals,
        Map<String, OfSpecies> bySpecies,
        Assumptions assumptions) {

    public OnRecord {
        animals = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(animals));
        bySpecies = Map.copyOf(bySpecies);
    }

    /// @param faults records of descent that cannot be true, and were left out
    public record OfSpecies(CollectionRecords records, List<PedigreeFault> faults) {

        public OfSpecies {
            faults = List.copyOf(faults);
        }
    }

    /// @param catalogues the catalogue of each species that animals are of
    public static OnRecord of(Transaction tx, Function<String, Catalogue> catalogues) {
        var animals = new LinkedHashMap<AnimalId, Animal>();
        new Animals(tx).all().forEach(animal -> animals.put(animal.id(), animal));
        var statements = new Statements(tx).latest(animals.keySet());
        var bySpecies = new HashMap<String, OfSpecies>();
        animals.values().stream()
                .collect(Collectors.groupingBy(Animal::species))
                .forEach(
                        (species, members) ->
                                bySpecies.put(
                                        species,
                                        ofSpecies(catalogues.apply(species), members, statements)));
        return new OnRecord(animals, bySpecies, Assumed.read(new Settings(tx)));
    }

    public Optional<Animal> find(AnimalId animal) {
        return Optional.ofNullable(animals.get(animal));
    }

    private static OfSpecies ofSpecies(
            Catalogue catalogue, Collection<Animal> animals, Map<AnimalId, Latest> statements) {
        var lines = GeneLine.of(catalogue);
        var members = new ArrayList<Member>();
        var own = new HashMap<AnimalId, OwnRecords>();
        var ids = animals.stream().map(Animal::id).collect(Collectors.toSet());
        for (var animal : animals) {
            members.add(within(ids, animal.member()));
            var latest = statements.get(animal.id());
            if (latest != null) {
                own.put(animal.id(), OwnStatements.of(lines, latest, animal.sex()));
            }
        }
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new OfSpecies(
                            new CollectionRecords(catalogue.model(), pedigree, own), List.of());
            case Pedigree.Result.Faulty(var faults) -> without(faults, catalogue, members, own);
        };
    }

    /// The store refuses such records; a file that somebody else wrote may hold them all the
    /// same.
    private static OfSpecies without(
            List<PedigreeFault> faults,
            Catalogue catalogue,
            List<Member> members,
            Map<AnimalId, OwnRecords> own) {
        var faulty = faults.stream().map(PedigreeFault::animal).collect(Collectors.toSet());
        var rest =
                members.stream()
                        .map(member -> faulty.contains(member.id()) ? founder(member) : member)
                        .toList();
        return switch (Pedigree.of(rest)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new OfSpecies(new CollectionRecords(catalogue.model(), pedigree, own), faults);
            case Pedigree.Result.Faulty(var left) ->
                    throw new IllegalStateException("descent stays impossible: " + left);
        };
    }

    private static Member founder(Member member) {
        return new Member(member.id(), member.sex(), member.hatched(), new Parentage.Founder());
    }

    /// A parent of another species says nothing about the genes of this one.
    private static Member within(Set<AnimalId> ids, Member member) {
        var parents = new ArrayList<>(member.parentage().dams());
        parents.addAll(member.parentage().sires());
        return ids.containsAll(parents) ? member : founder(member);
    }
}
