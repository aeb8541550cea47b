package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Fate;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/// The animal's clutches, newest first, and its young that are of no clutch on record.
public record YoungPart(List<OfClutch> clutches, List<Young> others) {

    public YoungPart {
        clutches = List.copyOf(clutches);
        others = List.copyOf(others);
    }

    /// @param mates the other parent, or several where he is in doubt
    /// @param eggs how many there were and what became of them
    public record OfClutch(
            String number,
            String path,
            String laid,
            List<Link> mates,
            String eggs,
            List<Young> young) {

        public OfClutch {
            mates = List.copyOf(mates);
            young = List.copyOf(young);
        }
    }

    public record Young(String tag, String path, String sign, String sex, Markup genes) {}

    public boolean isEmpty() {
        return clutches.isEmpty() && others.isEmpty();
    }

    static YoungPart of(
            Transaction tx, Holding holding, Knowledge knowledge, Animal animal, Formats formats) {
        var clutches = new ArrayList<>(new Clutches(tx).of(animal.id()));
        clutches.sort(Comparator.comparing(Clutch::number).reversed());
        var inClutches = new HashSet<AnimalId>();
        clutches.forEach(clutch -> inClutches.addAll(clutch.hatchlings()));
        return new YoungPart(
                clutches.stream()
                        .map(clutch -> ofClutch(clutch, holding, knowledge, animal, formats))
                        .toList(),
                new Animals(tx)
                        .offspringOf(animal.id()).stream()
                                .filter(young -> !inClutches.contains(young.id()))
                                .map(young -> young(young, holding))
                                .toList());
    }

    private static OfClutch ofClutch(
            Clutch clutch, Holding holding, Knowledge knowledge, Animal animal, Formats formats) {
        return new OfClutch(
                clutch.number().toString(),
                "/eggs/" + clutch.id().value(),
                formats.date(clutch.laid()),
                mates(clutch.parentage(), animal.id(), knowledge),
                eggs(clutch, formats),
                clutch.hatchlings().stream()
                        .flatMap(id -> knowledge.find(id).stream())
                        .map(young -> young(young, holding))
                        .toList());
    }

    private static List<Link> mates(Parentage parentage, AnimalId self, Knowledge knowledge) {
        var mates = parentage.dams().contains(self) ? parentage.sires() : parentage.dams();
        return mates.stream().flatMap(id -> link(knowledge, id).stream()).toList();
    }

    static Optional<Link> link(Knowledge knowledge, AnimalId id) {
        return knowledge
                .find(id)
                .map(found -> new Link(found.tag().value(), AnimalHead.path(found)));
    }

    private static String eggs(Clutch clutch, Formats formats) {
        var words = new ArrayList<String>();
        words.add(formats.count(clutch.goodEggs(), "egg", "eggs"));
        if (clutch.slugs() > 0) {
            words.add(formats.count(clutch.slugs(), "slug", "slugs"));
        }
        count(clutch, Fate.Hatched.class).ifPresent(n -> words.add(formats.whole(n) + " hatched"));
        count(clutch, Fate.Lost.class).ifPresent(n -> words.add(formats.whole(n) + " lost"));
        if (!clutch.isComplete()) {
            words.add(formats.whole(clutch.incubating().size()) + " incubating");
        }
        return String.join(", ", words);
    }

    private static Optional<Long> count(Clutch clutch, Class<? extends Fate> fate) {
        return Optional.of(
                        clutch.eggs().stream().filter(egg -> fate.isInstance(egg.fate())).count())
                .filter(n -> n > 0);
    }

    private static Young young(Animal young, Holding holding) {
        return new Young(
                young.tag().value(),
                AnimalHead.path(young),
                AnimalWords.sign(young),
                AnimalWords.sex(young),
                holding.line(young.id()).line());
    }
}
