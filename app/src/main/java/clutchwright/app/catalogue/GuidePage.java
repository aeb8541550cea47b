package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.records.overlay.OwnGenes;
import clutchwright.records.statements.Statements;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// The guide to the genes of a species, and the names that the trade gives to several at once.
@Controller
public class GuidePage {

    private final Holding holding;

    GuidePage(Holding holding) {
        this.holding = holding;
    }

    /// @param form the species under `species`, what is looked for under `name`
    @GetMapping("/catalogue")
    public Reply show(Form form) {
        var asked = form.text("species").isEmpty() ? holding.mainSpecies() : form.text("species");
        return holding.findLines(asked).isPresent()
                ? Reply.show(view(asked, form.text("name")))
                : noSuchSpecies(asked);
    }

    @GetMapping("/catalogue/{species}/names")
    public Reply showNames(@PathVariable String species) {
        if (holding.findLines(species).isEmpty()) {
            return noSuchSpecies(species);
        }
        var guide = Guide.of(holding, species, "");
        var of = guide.catalogue().species();
        return Reply.show(
                new NamesView(
                        species,
                        SpeciesWords.within(of),
                        of.combinations().stream()
                                .map(combination -> CombinationLine.of(guide, combination))
                                .toList(),
                        of.remarks()));
    }

    static Reply noSuchSpecies(String asked) {
        return Reply.missing("There is no catalogue named " + asked + ".");
    }

    private GuideView view(String species, String typed) {
        var guide = Guide.of(holding, species, typed);
        var search = guide.search();
        var of = guide.catalogue().species();
        var animals = holding.database().read(tx -> new Statements(tx).animalsByLocus(species));
        return new GuideView(
                choices(),
                species,
                of.latinName(),
                typed,
                guide.groups(animals),
                of.combinations().stream()
                        .filter(combination -> !search.isForAll() && search.meets(combination))
                        .map(combination -> CombinationLine.of(guide, combination))
                        .toList(),
                of.remarks().stream()
                        .filter(remark -> !search.isForAll() && search.meets(remark))
                        .toList(),
                unread(species),
                !guide.catalogue().ownEntries().isEmpty());
    }

    private List<Choice> choices() {
        return Catalogue.shippedSpecies().stream()
                .map(id -> new Choice(id, SpeciesWords.name(holding.catalogue(id).species())))
                .toList();
    }

    private List<UnreadLine> unread(String species) {
        return holding.unreadGenes(species).stream().map(GuidePage::unread).toList();
    }

    private static UnreadLine unread(OwnGenes.Unread unread) {
        var fault = unread.faults().getFirst();
        var entry = unread.entry();
        return new UnreadLine(
                entry.locus().value(),
                "line %d: %s, where %s was expected"
                        .formatted(fault.line(), fault.found(), fault.expected()),
                "/catalogue/%s/%s/text".formatted(entry.species(), entry.locus()));
    }
}
