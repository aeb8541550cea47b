package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.CatalogueFaultWords;
import clutchwright.app.wording.ReadingWords;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.LocusId;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// Genes of the keeper's own, and what the keeper changes of the others, by forms.
@Controller
public class OwnGenePage {

    private final Holding holding;

    OwnGenePage(Holding holding) {
        this.holding = holding;
    }

    /// @param form what it is to be called, under `name`, if that was typed already
    @GetMapping("/catalogue/{species}/new")
    public Reply begin(@PathVariable String species, Form form) {
        return holding.findLines(species).isEmpty()
                ? GuidePage.noSuchSpecies(species)
                : Reply.show(newView(species, NewGene.blank(form.text("name")), List.of()));
    }

    @PostMapping("/catalogue/{species}/new")
    public Reply add(@PathVariable String species, Form form) {
        if (holding.findLines(species).isEmpty()) {
            return GuidePage.noSuchSpecies(species);
        }
        if (form.text("a0-head").isEmpty()) {
            return Reply.faulty(
                    newView(
                            species,
                            form.withFault("a0-head", "Write what it is called."),
                            List.of()));
        }
        var draft = new NewGene(form).sheet().draft();
        var written = new OwnGenesWriting(holding, species).add(draft.text());
        return switch (written.result()) {
            case OwnOutcome.Saved saved -> going(species, written, saved);
            case OwnOutcome.Faulty(var faults) ->
                    Reply.faulty(
                            newView(
                                    species,
                                    beside(form, faults, line -> NewGene.field(draft.field(line))),
                                    List.of()));
            case OwnOutcome.InUse(var animals) ->
                    Reply.faulty(newView(species, form, new AnimalLinks(holding).of(animals)));
            case OwnOutcome.Stale _ ->
                    Reply.conflict("Somebody else has just added a gene of that name.");
        };
    }

    @GetMapping("/catalogue/{species}/{locus}/edit")
    public Reply open(@PathVariable String species, @PathVariable String locus) {
        return with(
                species,
                locus,
                entry -> {
                    var sheet = LocusSheet.read(CatalogueText.write(entry)).withRoom();
                    var form = sheet.form().with("version", version(species, entry.id()));
                    return Reply.show(
                            editView(species, entry, new LocusSheet(locus, form), List.of()));
                });
    }

    @PostMapping("/catalogue/{species}/{locus}/edit")
    public Reply change(@PathVariable String species, @PathVariable String locus, Form form) {
        return with(species, locus, entry -> change(species, entry, form));
    }

    /// Also an own gene that cannot be read, and so stands nowhere.
    @PostMapping("/catalogue/{species}/{locus}/remove")
    public Reply remove(@PathVariable String species, @PathVariable String locus, Form form) {
        if (holding.findLines(species).isEmpty() || !LocusId.isWellFormed(locus)) {
            return LocusPage.noSuchLocus(locus);
        }
        var reading = LocusReading.of(holding, species);
        var entry = reading.find(locus);
        var title = entry.map(LocusEntry::title).orElse(locus);
        var id = new LocusId(locus);
        var written = new OwnGenesWriting(holding, species).remove(id, form.text("version"));
        return switch (written.result()) {
            case OwnOutcome.Saved _ -> removed(species, written, id, title);
            case OwnOutcome.InUse(var animals) ->
                    Reply.faulty(
                            reading.view(
                                    entry.orElseThrow(), new AnimalLinks(holding).of(animals)));
            case OwnOutcome.Stale _ ->
                    Reply.conflict(
                            "Somebody else has changed %s in the meantime.".formatted(title));
            case OwnOutcome.Faulty(var faults) ->
                    throw new IllegalStateException("nothing was typed: " + faults);
        };
    }

    private Reply change(String species, LocusEntry entry, Form form) {
        var sheet = new LocusSheet(entry.id().value(), form);
        var draft = sheet.draft();
        var beside = ownEntry(species, entry.id()).map(own -> new OwnText(own.text()).beside());
        var written =
                new OwnGenesWriting(holding, species)
                        .change(
                                entry.id(),
                                form.text("version"),
                                draft.text() + beside.map(more -> "\n" + more).orElse(""));
        return switch (written.result()) {
            case OwnOutcome.Saved saved -> going(species, written, saved);
            case OwnOutcome.Faulty(var faults) ->
                    Reply.faulty(
                            editView(
                                    species,
                                    entry,
                                    new LocusSheet(
                                            sheet.locus(), beside(form, faults, draft::field)),
                                    List.of()));
            case OwnOutcome.InUse(var animals) ->
                    Reply.faulty(
                            editView(species, entry, sheet, new AnimalLinks(holding).of(animals)));
            case OwnOutcome.Stale(var current) ->
                    Reply.conflictWith(
                            OwnTextPage.conflict(
                                    species, entry.id(), entry.title(), draft.text(), current));
        };
    }

    private Reply removed(
            String species, Written<OwnOutcome> written, LocusId locus, String title) {
        return holding.shipped(species).species().findLocus(locus).isPresent()
                ? written.going(path(species, locus), title + " reads as it comes again.")
                : written.going(
                        "/catalogue?species=" + species, "The gene " + title + " is removed.");
    }

    static Reply going(String species, Written<OwnOutcome> written, OwnOutcome.Saved saved) {
        var shared = saved.shared();
        return written.going(
                path(species, saved.locus()),
                shared.isEmpty()
                        ? "Saved. It can be typed wherever genes are typed."
                        : "Saved. %s now %s for several genes: whoever writes it is asked which."
                                .formatted(
                                        ReadingWords.quoted(shared),
                                        shared.size() == 1 ? "stands" : "stand"));
    }

    static String path(String species, LocusId locus) {
        return "/catalogue/" + species + "/" + locus;
    }

    private static Form beside(
            Form form, List<CatalogueText.Fault> faults, IntFunction<String> fields) {
        var faulty = form;
        for (var fault : faults) {
            faulty = faulty.withFault(fields.apply(fault.line()), CatalogueFaultWords.of(fault));
        }
        return faulty;
    }

    private Reply with(String species, String locus, Function<LocusEntry, Reply> page) {
        if (holding.findLines(species).isEmpty()) {
            return GuidePage.noSuchSpecies(species);
        }
        return LocusReading.of(holding, species)
                .find(locus)
                .map(page)
                .orElseGet(() -> LocusPage.noSuchLocus(locus));
    }

    private NewGeneView newView(String species, Form form, List<Link> refused) {
        var name = SpeciesWords.within(holding.catalogue(species).species());
        return new NewGeneView(species, name, form, refused);
    }

    private static EditGeneView editView(
            String species, LocusEntry entry, LocusSheet sheet, List<Link> refused) {
        return new EditGeneView(
                path(species, entry.id()),
                entry.title(),
                sheet.form(),
                sheet.count("a"),
                sheet.count("f"),
                sheet.count("c"),
                refused);
    }

    private Optional<OverlayEntry> ownEntry(String species, LocusId locus) {
        return holding.database().read(tx -> new Overlay(tx).find(species, locus));
    }

    private String version(String species, LocusId locus) {
        return ownEntry(species, locus).map(own -> Long.toString(own.version())).orElse("");
    }
}
