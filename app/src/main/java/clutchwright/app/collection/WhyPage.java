package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/// Why an animal is thought to carry a gene: every record that bears on it, by weight.
@Controller
public class WhyPage {

    private static final JsonMapper JSON =
            JsonMapper.builder().disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

    private final Holding holding;

    WhyPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/collection/{id:[0-9]{1,18}}/why")
    public Reply show(@PathVariable long id, Form form) {
        var animal = holding.knowledge().find(new AnimalId(id));
        if (animal.isEmpty()) {
            return Reply.missing(AnimalPage.MISSING);
        }
        var inference = inference(animal.get());
        var genes = inference.map(found -> genes(found, animal.get())).orElse(List.of());
        var asked = form.text("gene");
        var gene =
                genes.stream()
                        .filter(one -> asked.isEmpty() || one.name().equalsIgnoreCase(asked))
                        .findFirst();
        return Reply.show(
                WhyView.of(
                        animal.get(),
                        inference.isPresent(),
                        genes,
                        gene,
                        gene.flatMap(one -> why(inference.orElseThrow(), animal.get(), one))));
    }

    /// The same of all genes that it may carry, for other programs.
    @GetMapping(path = "/collection/{id:[0-9]{1,18}}/why.json", produces = "application/json")
    public ResponseEntity<String> json(@PathVariable long id) {
        var animal = holding.knowledge().find(new AnimalId(id));
        var inference = animal.flatMap(this::inference);
        if (animal.isEmpty() || inference.isEmpty()) {
            return ResponseEntity.notFound().build();
        }
        var all =
                genes(inference.get(), animal.get()).stream()
                        .flatMap(gene -> why(inference.get(), animal.get(), gene).stream())
                        .toList();
        return ResponseEntity.ok(JSON.writerWithDefaultPrettyPrinter().writeValueAsString(all));
    }

    private Optional<PedigreeInference> inference(Animal animal) {
        return holding.knowledge()
                .posteriors(animal.species())
                .map(Posteriors::inference)
                .filter(found -> found.records().pedigree().contains(animal.id()));
    }

    private Optional<Why> why(PedigreeInference inference, Animal animal, Allele gene) {
        return Why.of(inference, animal.id(), gene, this::tag);
    }

    private String tag(AnimalId animal) {
        return holding.knowledge()
                .find(animal)
                .map(found -> found.tag().value())
                .orElse(animal.toString());
    }

    /// Those that it carries at a chance worth a word.
    private static List<Allele> genes(PedigreeInference inference, Animal animal) {
        var genes = new ArrayList<Allele>();
        for (var locus : inference.loci()) {
            inference
                    .chancesAt(locus)
                    .ifPresent(
                            chances ->
                                    inference
                                            .records()
                                            .model()
                                            .theLocus(locus)
                                            .locus()
                                            .alleles()
                                            .stream()
                                            .filter(allele -> !allele.isWild())
                                            .filter(
                                                    allele ->
                                                            chances.chanceOfCarrying(
                                                                            animal.id(), allele)
                                                                    >= WhyView.LEAST)
                                            .forEach(genes::add));
        }
        return genes;
    }
}
