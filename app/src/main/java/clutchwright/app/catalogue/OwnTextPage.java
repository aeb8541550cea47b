package clutchwright.app.catalogue;

import clutchwright.app.catalogue.GeneTextView.FaultLine;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.overlay.OwnGenes;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// Genes of the keeper's own as text, in the format of the species files.
@Controller
public class OwnTextPage {

    private static final String EXAMPLE =
            """
            locus ember
              title     Ember
              inherits  autosomal
              allele Ember
                mode      incomplete dominant
                also      emb
              form Ember/Ember
                name      Super Ember
            """;

    private final Holding holding;

    OwnTextPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/catalogue/{species}/new/text")
    public Reply begin(@PathVariable String species) {
        return holding.findLines(species).isEmpty()
                ? GuidePage.noSuchSpecies(species)
                : Reply.show(newView(species, EXAMPLE, List.of(), List.of()));
    }

    @PostMapping("/catalogue/{species}/new/text")
    public Reply add(@PathVariable String species, Form form) {
        if (holding.findLines(species).isEmpty()) {
            return GuidePage.noSuchSpecies(species);
        }
        var text = text(form);
        var written = new OwnGenesWriting(holding, species).add(text);
        return switch (written.result()) {
            case OwnOutcome.Saved saved -> OwnGenePage.going(species, written, saved);
            case OwnOutcome.Faulty(var faults) ->
                    Reply.faulty(newView(species, text, FaultLine.of(text, faults), List.of()));
            case OwnOutcome.InUse(var animals) ->
                    Reply.faulty(newView(species, text, List.of(), links(animals)));
            case OwnOutcome.Stale _ ->
                    Reply.conflict("Somebody else has just added a gene of that name.");
        };
    }

    @GetMapping("/catalogue/{species}/{locus}/text")
    public Reply open(@PathVariable String species, @PathVariable String locus) {
        var known = find(species, locus);
        return known.isEmpty()
                ? LocusPage.noSuchLocus(locus)
                : Reply.show(
                        view(
                                species,
                                known.get(),
                                known.get().text(),
                                known.get().version(),
                                List.of(),
                                List.of()));
    }

    @PostMapping("/catalogue/{species}/{locus}/text")
    public Reply change(@PathVariable String species, @PathVariable String locus, Form form) {
        var known = find(species, locus);
        if (known.isEmpty()) {
            return LocusPage.noSuchLocus(locus);
        }
        var at = known.get();
        var text = text(form);
        var version = form.text("version");
        var written = new OwnGenesWriting(holding, species).change(at.locus(), version, text);
        return switch (written.result()) {
            case OwnOutcome.Saved saved -> OwnGenePage.going(species, written, saved);
            case OwnOutcome.Faulty(var faults) ->
                    Reply.faulty(
                            view(
                                    species,
                                    at,
                                    text,
                                    version,
                                    FaultLine.of(text, faults),
                                    List.of()));
            case OwnOutcome.InUse(var animals) ->
                    Reply.faulty(view(species, at, text, version, List.of(), links(animals)));
            case OwnOutcome.Stale(var current) ->
                    Reply.conflictWith(conflict(species, at, text, current));
        };
    }

    /// All own genes of a species, to be kept or to be given to somebody.
    @GetMapping("/catalogue/{species}/own.species")
    public ResponseEntity<String> takeAlong(@PathVariable String species) {
        if (holding.findLines(species).isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        var entries = holding.database().read(tx -> new Overlay(tx).of(species));
        var name = ContentDisposition.attachment().filename("own-" + species + ".species").build();
        return ResponseEntity.ok()
                .contentType(new MediaType(MediaType.TEXT_PLAIN, StandardCharsets.UTF_8))
                .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
                .body("# Own genes, to be laid over " + species + ".\n\n" + OwnGenes.text(entries));
    }

    private static GeneTextView conflict(
            String species, Known at, String typed, Optional<OverlayEntry> current) {
        return conflict(species, at.locus(), at.title(), typed, current);
    }

    /// Both versions side by side, what was typed ready to be saved over the other.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    static GeneTextView conflict(
            String species,
            LocusId locus,
            String title,
            String typed,
            Optional<OverlayEntry> current) {
        var path = OwnGenePage.path(species, locus);
        return new GeneTextView(
                path + "/text",
                path,
                title,
                typed,
                current.map(entry -> Long.toString(entry.version())).orElse(""),
                List.of(),
                current.map(OverlayEntry::text).orElse("The own entry was removed."),
                List.of());
    }

    /// What stands of a locus now: also one that cannot be read, so that it can be mended.
    ///
    /// @param version of the keeper's entry; empty where there is none
    private record Known(LocusId locus, String title, String text, String version) {}

    private Optional<Known> find(String species, String locus) {
        if (holding.findLines(species).isEmpty() || !LocusId.isWellFormed(locus)) {
            return Optional.empty();
        }
        var id = new LocusId(locus);
        var entry = holding.catalogue(species).species().findLocus(id);
        var title = entry.map(LocusEntry::title).orElse(locus);
        return holding.database()
                .read(tx -> new Overlay(tx).find(species, id))
                .map(own -> new Known(id, title, own.text(), Long.toString(own.version())))
                .or(() -> entry.map(of -> new Known(id, title, CatalogueText.write(of), "")));
    }

    private static GeneTextView view(
            String species,
            Known at,
            String text,
            String version,
            List<FaultLine> faults,
            List<Link> refused) {
        var path = OwnGenePage.path(species, at.locus());
        return new GeneTextView(
                path + "/text", path, at.title(), text, version, faults, "", refused);
    }

    private static GeneTextView newView(
            String species, String text, List<FaultLine> faults, List<Link> refused) {
        var path = "/catalogue/" + species + "/new";
        return new GeneTextView(path + "/text", path, "", text, "", faults, "", refused);
    }

    private List<Link> links(List<AnimalId> animals) {
        return new AnimalLinks(holding).of(animals);
    }

    /// As typed: the blanks before the first word count.
    private static String text(Form form) {
        return form.texts("text").stream()
                .findFirst()
                .orElse("")
                .replace("\r\n", "\n")
                .stripTrailing();
    }
}
